using Casewright.Engine.Cutting.Reduction;

namespace Casewright.Engine.Cutting.Layouts;

/// <summary>
/// One sheet being filled: a tree of rows whose direction turns from level to level, every row with one free end.
/// The order of regions in a row is left open, so their free spaces count as one.
/// </summary>
internal sealed class Bin
{
    private BinNode[] _nodes = new BinNode[16];
    private FreeSlot[] _slots = new FreeSlot[8];
    private int _used;

    // Rows that are part of the stock itself: the whole, and the clear stretches of a board with defects.
    private int _fixed;
    private int _pieces;
    private SheetKind? _stock;

    /// <summary>Index of the kind of sheet.</summary>
    public int Sheet { get; private set; }

    public long SizeX { get; private set; }

    public long SizeY { get; private set; }

    /// <summary>Area of the pieces.</summary>
    public double FilledArea { get; private set; }

    /// <summary>Slots of <see cref="Nodes"/> in use or once used.</summary>
    public int NodeLimit => _used;

    public ReadOnlySpan<BinNode> Nodes => _nodes.AsSpan(0, _used);

    /// <summary>Free ends that may take pieces.</summary>
    public ReadOnlySpan<FreeSlot> Slots => _slots.AsSpan(0, SlotCount);

    public int SlotCount { get; private set; }

    public bool IsEmpty => _pieces == 0;

    /// <summary>Number of the search step that made this copy.</summary>
    public long Stamp { get; set; }

    /// <summary>Makes this an empty sheet whose first cuts lay parts along the axis.</summary>
    public void Start(int sheet, SheetKind stock, byte axis)
    {
        Sheet = sheet;
        SizeX = stock.SizeX;
        SizeY = stock.SizeY;
        FilledArea = 0;
        SlotCount = 0;
        _stock = stock;
        _pieces = 0;
        _used = 1;
        _nodes[0] = new BinNode
        {
            Kind = BinNode.Row,
            Parent = -1,
            First = -1,
            Next = -1,
            Axis = axis,
            SizeX = SizeX,
            SizeY = SizeY,
            Free = axis == Axis.X ? SizeX : SizeY,
        };
        if (stock.Segments is { } segments)
            StartSegments(segments);
        else
            AddSlot(0);
        _fixed = _used;
    }

    private void StartSegments(long[] segments)
    {
        foreach (var segment in segments)
            AddSlot(AddRow(AddRow(0, segment), SizeY));
        _nodes[0].Free = 0;
    }

    /// <summary>Fills an empty sheet as a layout says, which begins with this sheet's first cuts.</summary>
    public void Load(LayoutTree tree, PieceKind[] kinds, CutLimits limits)
    {
        LoadParts(0, tree, kinds);
        Refresh(limits);
    }

    private void LoadParts(int row, LayoutTree tree, PieceKind[] kinds)
    {
        var axis = _nodes[row].Axis;
        foreach (var part in tree.Parts)
        {
            if (!part.IsPiece)
            {
                LoadParts(AddRow(row, part.Along(axis)), part, kinds);
                continue;
            }

            var across = axis == Axis.X ? _nodes[row].SizeY : _nodes[row].SizeX;
            var into = part.Along((byte)(1 - axis)) == across ? row : AddRow(row, part.Along(axis));
            AddPiece(into, new Placement(part.Kind, part.Turned, Across: false), part.SizeX, part.SizeY);
            FilledArea += kinds[part.Kind].Area;
            _pieces++;
        }
    }

    public void CopyFrom(Bin other)
    {
        Sheet = other.Sheet;
        SizeX = other.SizeX;
        SizeY = other.SizeY;
        FilledArea = other.FilledArea;
        _fixed = other._fixed;
        _pieces = other._pieces;
        _stock = other._stock;
        _used = other._used;
        if (_nodes.Length < _used)
            _nodes = new BinNode[other._nodes.Length];
        Array.Copy(other._nodes, _nodes, _used);
        SlotCount = other.SlotCount;
        if (_slots.Length < SlotCount)
            _slots = new FreeSlot[other._slots.Length];
        Array.Copy(other._slots, _slots, SlotCount);
    }

    /// <summary>Puts a piece into a free end.</summary>
    public void Insert(int slot, Placement placement, PieceKind kind, CutLimits limits)
    {
        var row = _slots[slot].Node;
        var axis = _nodes[row].Axis;
        var sizeX = placement.Turned ? kind.SizeY : kind.SizeX;
        var sizeY = placement.Turned ? kind.SizeX : kind.SizeY;
        var along = axis == Axis.X ? sizeX : sizeY;
        if (placement.Across)
        {
            var whole = AddRow(row, _nodes[row].Free);
            var across = axis == Axis.X ? sizeY : sizeX;
            var inner = AddRow(whole, across);
            AddPiece(inner, placement, sizeX, sizeY);
            ReviseSlot(slot, row, limits);
            OfferSlot(whole, limits);
            OfferSlot(inner, limits);
        }
        else if ((axis == Axis.X ? _nodes[row].SizeY == sizeY : _nodes[row].SizeX == sizeX))
        {
            AddPiece(row, placement, sizeX, sizeY);
            ReviseSlot(slot, row, limits);
        }
        else
        {
            var part = AddRow(row, along);
            AddPiece(part, placement, sizeX, sizeY);
            ReviseSlot(slot, row, limits);
            OfferSlot(part, limits);
        }

        FilledArea += kind.Area;
        _pieces++;
    }

    /// <summary>Takes out a region with all pieces in it; tells every piece's kind.</summary>
    public void Remove(int node, PieceKind[] kinds, int[] removed)
    {
        if (node < _fixed)
        {
            for (var i = _fixed; i < _used; i++)
            {
                if (_nodes[i].Kind >= 0)
                    Clear(i, kinds, removed);
            }

            Start(Sheet, _stock!, _nodes[0].Axis);
            return;
        }

        var parent = _nodes[node].Parent;
        Unlink(parent, node);
        Clear(node, kinds, removed);
        while (parent >= _fixed && _nodes[parent].First < 0)
        {
            var empty = parent;
            parent = _nodes[empty].Parent;
            Unlink(parent, empty);
            _nodes[empty].Kind = BinNode.Unused;
        }
    }

    /// <summary>Finds the free ends anew after removals.</summary>
    public void Refresh(CutLimits limits)
    {
        SlotCount = 0;
        while (_used > _fixed && _nodes[_used - 1].Kind == BinNode.Unused)
            _used--;
        for (var i = 0; i < _used; i++)
        {
            if (_nodes[i].Kind == BinNode.Row)
                OfferSlot(i, limits);
        }
    }

    /// <summary>Shrinks every row to what its pieces need, so that free space gathers at the ends nearest the whole sheet.</summary>
    public void Tighten()
    {
        if (_fixed == 1)
            Tighten(0);
    }

    private void Tighten(int row)
    {
        var axis = _nodes[row].Axis;
        var used = 0L;
        for (var part = _nodes[row].First; part >= 0; part = _nodes[part].Next)
        {
            if (_nodes[part].Kind == BinNode.Row)
            {
                Tighten(part);
                var needed = ExtentNeeded(part);
                Resize(part, axis, needed);
            }

            used += axis == Axis.X ? _nodes[part].SizeX : _nodes[part].SizeY;
        }

        _nodes[row].Free = (axis == Axis.X ? _nodes[row].SizeX : _nodes[row].SizeY) - used;
    }

    // A row needs, across its own axis, the largest of its parts.
    private long ExtentNeeded(int row)
    {
        var across = 0L;
        for (var part = _nodes[row].First; part >= 0; part = _nodes[part].Next)
        {
            var need = _nodes[part].Kind == BinNode.Row ? AlongNeeded(part) : (_nodes[row].Axis == Axis.X ? _nodes[part].SizeY : _nodes[part].SizeX);
            across = Math.Max(across, need);
        }

        return across;
    }

    private long AlongNeeded(int row)
    {
        var axis = _nodes[row].Axis;
        var sum = 0L;
        for (var part = _nodes[row].First; part >= 0; part = _nodes[part].Next)
            sum += axis == Axis.X ? _nodes[part].SizeX : _nodes[part].SizeY;
        return sum;
    }

    // Changes the extent of a row across its axis; its parts that are rows along that extent get more or less free end.
    private void Resize(int row, byte axis, long extent)
    {
        var before = axis == Axis.X ? _nodes[row].SizeX : _nodes[row].SizeY;
        if (before == extent)
            return;
        if (axis == Axis.X)
            _nodes[row].SizeX = extent;
        else
            _nodes[row].SizeY = extent;
        for (var part = _nodes[row].First; part >= 0; part = _nodes[part].Next)
        {
            if (_nodes[part].Kind != BinNode.Row)
                continue;
            if (axis == Axis.X)
                _nodes[part].SizeX = extent;
            else
                _nodes[part].SizeY = extent;
            _nodes[part].Free += extent - before;
        }
    }

    private void Clear(int node, PieceKind[] kinds, int[] removed)
    {
        if (_nodes[node].Kind >= 0)
        {
            removed[_nodes[node].Kind]++;
            FilledArea -= kinds[_nodes[node].Kind].Area;
            _pieces--;
        }
        else
        {
            for (var part = _nodes[node].First; part >= 0; part = _nodes[part].Next)
                Clear(part, kinds, removed);
        }

        _nodes[node].Kind = BinNode.Unused;
    }

    private void Unlink(int parent, int node)
    {
        if (_nodes[parent].First == node)
        {
            _nodes[parent].First = _nodes[node].Next;
        }
        else
        {
            var before = _nodes[parent].First;
            while (_nodes[before].Next != node)
                before = _nodes[before].Next;
            _nodes[before].Next = _nodes[node].Next;
        }

        _nodes[parent].Free += _nodes[parent].Axis == Axis.X ? _nodes[node].SizeX : _nodes[node].SizeY;
    }

    private int AddRow(int parent, long extent)
    {
        var axis = _nodes[parent].Axis;
        var sizeX = axis == Axis.X ? extent : _nodes[parent].SizeX;
        var sizeY = axis == Axis.Y ? extent : _nodes[parent].SizeY;
        var node = Link(parent, extent);
        _nodes[node].Kind = BinNode.Row;
        _nodes[node].First = -1;
        _nodes[node].Axis = (byte)(1 - axis);
        _nodes[node].SizeX = sizeX;
        _nodes[node].SizeY = sizeY;
        _nodes[node].Free = axis == Axis.X ? sizeY : sizeX;
        return node;
    }

    private void AddPiece(int parent, Placement placement, long sizeX, long sizeY)
    {
        var axis = _nodes[parent].Axis;
        var node = Link(parent, axis == Axis.X ? sizeX : sizeY);
        _nodes[node].Kind = placement.Kind;
        _nodes[node].Turned = placement.Turned;
        _nodes[node].First = -1;
        _nodes[node].SizeX = sizeX;
        _nodes[node].SizeY = sizeY;
    }

    private int Link(int parent, long extent)
    {
        var node = _used;
        if (_used == _nodes.Length)
        {
            for (var i = _fixed; i < _used && node == _used; i++)
            {
                if (_nodes[i].Kind == BinNode.Unused)
                    node = i;
            }

            if (node == _used)
                Array.Resize(ref _nodes, _used * 2);
        }

        if (node == _used)
            _used++;
        _nodes[node] = new BinNode { Parent = parent, Next = _nodes[parent].First, Level = _nodes[parent].Level + 1 };
        _nodes[parent].First = node;
        _nodes[parent].Free -= extent;
        return node;
    }

    private void ReviseSlot(int slot, int row, CutLimits limits)
    {
        if (_nodes[row].Free > 0 && limits.Usable(_nodes[row].Level))
            _slots[slot] = SlotOf(row);
        else
            _slots[slot] = _slots[--SlotCount];
    }

    private void OfferSlot(int row, CutLimits limits)
    {
        if (_nodes[row].Free > 0 && limits.Usable(_nodes[row].Level))
            AddSlot(row);
    }

    private void AddSlot(int row)
    {
        if (SlotCount == _slots.Length)
            Array.Resize(ref _slots, SlotCount * 2);
        _slots[SlotCount++] = SlotOf(row);
    }

    private FreeSlot SlotOf(int row)
    {
        ref var node = ref _nodes[row];
        return new FreeSlot(
            row, node.Level, node.Axis, node.Axis == Axis.X ? node.Free : node.SizeX, node.Axis == Axis.Y ? node.Free : node.SizeY);
    }
}
