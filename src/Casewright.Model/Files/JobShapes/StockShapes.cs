using Casewright.Model.Files.Shapes;
using Casewright.Model.Measure;
using Casewright.Model.Stock;

namespace Casewright.Model.Files.JobShapes;

/// <summary>Materials, sheets and boards in a job file.</summary>
internal static class StockShapes
{
    private const int MostOnHand = 100_000;
    private const int LongestLead = 1000;

    public static RecordShape<Material> Material { get; } = new(
        "material",
        "A material that parts are made of: a panel of one thickness, or a board of one section.",
        f => new()
        {
            Id = f.Required("id", m => m.Id, TextShape.Id, "Short id; every material has its own."),
            Name = f.Required("name", m => m.Name, TextShape.Words, "Name as the shop says it."),
            Kind = f.Required("kind", m => m.Kind, Choices.MaterialKind, "What it is made of."),
            Nominal = f.Required("nominal", m => m.Nominal, LengthShape.Between(1, 150), "Thickness as sold."),
            Measured = f.OptionalValue(
                "measured",
                m => m.Measured,
                LengthShape.Between(0.5m, 225),
                "Thickness as measured on the stock. All joinery uses it; leave it out while nobody has measured."),
            BoardWidth = f.OptionalValue(
                "boardWidth",
                m => m.BoardWidth,
                LengthShape.Between(5, 1000),
                "Section width when the material comes as boards (nosing, face frame, crown). Leave it out for sheets."),
            HasGrain = f.Required(
                "hasGrain",
                m => m.HasGrain,
                FlagShape.Instance,
                "true when the face has a grain that parts must follow; false when parts may be turned."),
            Density = f.OptionalValue(
                "density", m => m.Density, QuantityShape.Density, "Mean density; left out, the planning figure of its kind is used."),
            Elasticity = f.OptionalValue(
                "elasticity",
                m => m.Elasticity,
                QuantityShape.Elasticity,
                "Bending modulus of elasticity along the grain; left out, the planning figure of its kind is used."),
        })
    {
        Declares = source => (Ids.Materials, source["boardWidth"] is null ? Ids.SheetMaterial : Ids.BoardMaterial),
        Check = CheckMaterial,
    };

    public static RecordShape<SheetStock> Sheet { get; } = new("sheet", "A size of sheet on offer, on hand, or left over from earlier work.", f => new()
    {
        Id = f.Required("id", s => s.Id, TextShape.Id, "Short id; every sheet and board size has its own."),
        Material = f.Required("material", s => s.Material, Ids.Sheet, "Id of a sheet material."),
        Length = f.Required(
            "length", s => s.Length, LengthShape.Between(50, 30_000), "Size along the first stated side."),
        Width = f.Required(
            "width", s => s.Width, LengthShape.Between(50, 30_000), "Size along the second stated side."),
        GrainAcross = f.Default(
            "grainAcross",
            s => s.GrainAcross,
            FlagShape.Instance,
            false,
            "true when the face grain runs across the stated length, as in many large birch sheets."),
        Price = f.Required("price", s => s.Price, MoneyShape.Instance, "Price of one sheet bought."),
        OnHand = f.Default(
            "onHand", s => s.OnHand, new CountShape(0, MostOnHand), 0, "Number already in the rack, paid for; used before any is bought."),
        Limit = f.OptionalValue(
            "limit",
            s => s.Limit,
            new CountShape(0, MostOnHand),
            "The most that can be bought; left out, there is no limit. 0 for what exists only on hand."),
        LeadDays = f.Default("leadDays", s => s.LeadDays, new CountShape(0, LongestLead), 0, "Working days from order to delivery."),
        IsOffcut = f.Default(
            "isOffcut", s => s.IsOffcut, FlagShape.Instance, false, "true for an offcut with clean edges: no edge trim is taken off it."),
    })
    {
        Declares = _ => (Ids.Stock, "sheet"),
    };

    public static RecordShape<BoardStock> Board { get; } = new("board", "A length in which boards of a material's section are sold or on hand.", f => new()
    {
        Id = f.Required("id", b => b.Id, TextShape.Id, "Short id; every sheet and board size has its own."),
        Material = f.Required("material", b => b.Material, Ids.Board, "Id of a board material, that is one with a boardWidth."),
        Length = f.Required("length", b => b.Length, LengthShape.Between(50, 30_000), "Length of one board."),
        Price = f.Required("price", b => b.Price, MoneyShape.Instance, "Price of one board bought."),
        OnHand = f.Default(
            "onHand", b => b.OnHand, new CountShape(0, MostOnHand), 0, "Number already in the rack, paid for; used before any is bought."),
        Limit = f.OptionalValue(
            "limit", b => b.Limit, new CountShape(0, MostOnHand), "The most that can be bought; left out, there is no limit."),
        LeadDays = f.Default("leadDays", b => b.LeadDays, new CountShape(0, LongestLead), 0, "Working days from order to delivery."),
    })
    {
        Declares = _ => (Ids.Stock, "board"),
    };

    public static RecordShape<StockRoom> Room { get; } = new("stock", "Everything that parts can be cut from.", f => new()
    {
        Materials = f.Required("materials", s => s.Materials, new ListShape<Material>(Material, 1, 500), "Materials."),
        Sheets = f.Items("sheets", s => s.Sheets, Sheet, 0, 5000, "Sheets on offer and on hand, and offcuts."),
        Boards = f.Items("boards", s => s.Boards, Board, 0, 5000, "Boards on offer and on hand."),
    });

    private static void CheckMaterial(Material material, Spot spot)
    {
        if (material.Measured is not { } measured || (measured * 2 >= material.Nominal && measured * 2 <= material.Nominal * 3))
            return;
        spot["measured"].Fail(
            $"The measured thickness is far from the nominal one, {LengthFormat.Millimetres(material.Nominal, 3)}.",
            null,
            "from half to one and a half times the nominal thickness");
    }
}
