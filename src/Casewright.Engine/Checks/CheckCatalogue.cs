using Casewright.Engine.Checks.Building;
using Casewright.Engine.Checks.Fitting;
using Casewright.Engine.Checks.Gluing;
using Casewright.Engine.Checks.Seasons;
using Casewright.Engine.Checks.Sheets;
using Casewright.Engine.Checks.Shelves;
using Casewright.Engine.Checks.Splices;
using Casewright.Engine.Checks.Uprights;
using Casewright.Model.Collections;

namespace Casewright.Engine.Checks;

/// <summary>Every check, in the order in which findings of one severity are told.</summary>
public static class CheckCatalogue
{
    /// <summary>The checks; ids unique.</summary>
    public static ValueList<ICheck> All { get; } =
    [
        new ShelfSagCheck(),
        new FinalSagCheck(),
        new ShelfStrengthCheck(),
        new VisibleSagCheck(),
        new StandardLoadCheck(),
        new BoardSpanCheck(),
        new UnevenLoadCheck(),
        new ShelfPinCheck(),
        new SpliceStrengthCheck(),
        new SpliceHandlingCheck(),
        new SpliceTiltUpCheck(),
        new SpliceAxialCheck(),
        new SpliceClampCheck(),
        new SpliceMidspanCheck(),
        new SpliceSagCheck(),
        new SpliceDadoCheck(),
        new SplicePinCheck(),
        new SpliceHardwareCheck(),
        new SpliceCutOutCheck(),
        new SpliceFaceCheck(),
        new BackJointCheck(),
        new TenonWallCheck(),
        new TenonPlaceCheck(),
        new SpliceStubCheck(),
        new SightLineCheck(),
        new PartitionWebCheck(),
        new PinRowsMeetCheck(),
        new DadoBearingCheck(),
        new UprightBucklingCheck(),
        new CaseRackingCheck(),
        new TiltUpCheck(),
        new LiftRoomCheck(),
        new AccessRouteCheck(),
        new FloorLoadCheck(),
        new TipOverCheck(),
        new AnchorageCheck(),
        new NailerStudsCheck(),
        new LadderRailCheck(),
        new CaseWeightCheck(),
        new PieceWeightCheck(),
        new SheetWeightCheck(),
        new PartOverSheetCheck(),
        new GrainDirectionCheck(),
        new StockLeadCheck(),
        new RunWidthCheck(),
        new SurveyCheck(),
        new MeasuredThicknessCheck(),
        new HandedSidesCheck(),
        new ShelfThroughFrameCheck(),
        new FrontsOpenCheck(),
        new RoomDoorsCheck(),
        new RevisionCheck(),
        new GlueTemperatureCheck(),
        new OpenTimeCheck(),
        new MaterialClimateCheck(),
        new SolidMovementCheck(),
        new RunMovementCheck(),
        new AcclimatisingCheck(),
        new FinishFilmCheck(),
        new EdgingDepthCheck(),
        new SmallOverrunCheck(),
        new StripYieldCheck(),
        new LongSheetGrainCheck(),
        new OldPaintCheck(),
    ];
}
