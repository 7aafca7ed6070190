using System.Globalization;

namespace Casewright.Engine.Timeline.Work;

/// <summary>Ids of tasks. They say what is done to what, so that they stay the same when the plan does.</summary>
internal static class TaskIds
{
    public static string Unload(string stock) => "unload/" + stock;

    public static string Rip(string material, int delivery) => delivery == 0 ? "rip/" + material : string.Create(CultureInfo.InvariantCulture, $"rip/{material}/{delivery + 1}");

    public static string Crosscut(string material, int portion) =>
        portion == 0 ? "crosscut/" + material : string.Create(CultureInfo.InvariantCulture, $"crosscut/{material}/{portion + 1}");

    public static string SetUpSplices(string group) => "splice-setup/" + group;

    public static string PrepareSplices(string group, int lot) => $"splice-prepare/{group}/{Lot(lot)}";

    public static string Glue(string load) => "glue/" + load;

    public static string Unclamp(string load) => "unclamp/" + load;

    public static string Trim(int lot) => "trim/" + Lot(lot);

    public static string Housings(int lot) => "housings/" + Lot(lot);

    public static string PinRows(int lot) => "pin-rows/" + Lot(lot);

    public static string Nosings(int lot) => "nosings/" + Lot(lot);

    public static string Frames(int lot) => "frames/" + Lot(lot);

    public static string FrameToCase(string box) => "frame/" + box;

    public static string FrameToRun(string run) => "run-frame/" + run;

    public static string Base(string run) => "base/" + run;

    public static string Assemble(string box) => "assemble/" + box;

    public static string Back(string box) => "back/" + box;

    public static string Sand(string boxOrLot) => "sand/" + boxOrLot;

    public static string Coat(int coat, int lot) => string.Create(CultureInfo.InvariantCulture, $"coat{coat + 1}/{Lot(lot)}");

    public static string Deliver(int lot) => "deliver/" + Lot(lot);

    public static string SetBase(string run) => "set-base/" + run;

    public static string SetCase(string box) => "set/" + box;

    public static string Fillers(string run) => "fillers/" + run;

    public static string Mouldings(string run) => "mouldings/" + run;

    public static string HingeCups(int lot) => "hinges/" + Lot(lot);

    public static string DrawerBoxes(int lot) => "drawers/" + Lot(lot);

    public static string HangFronts(string run) => "fronts/" + run;

    public static string CleanUp => "clean-up";

    public static string Lot(int lot) => string.Create(CultureInfo.InvariantCulture, $"lot{lot + 1}");
}
