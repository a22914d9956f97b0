using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Practices;

namespace CushionService.Intake;

/// <summary>Checks an order's workroom, and takes what it leaves out from the usual practice of its units.</summary>
/// <remarks>The usual figures differ between orders in inches and metric ones: each is a round figure in the unit of its
/// workroom.</remarks>
internal static class WorkroomIntake
{
    private static readonly LengthField<Workroom> SeamAllowance = RecordForm<Workroom>.Length(nameof(Workroom.SeamAllowance)),
        CuttingStep = RecordForm<Workroom>.Length(nameof(Workroom.CuttingStep)),
        ZipperTurnUnder = RecordForm<Workroom>.Length(nameof(Workroom.ZipperTurnUnder)),
        ZipperReturn = RecordForm<Workroom>.Length(nameof(Workroom.ZipperReturn)),
        HemFold = RecordForm<Workroom>.Length(nameof(Workroom.HemFold)),
        TapeMargin = RecordForm<Workroom>.Length(nameof(Workroom.TapeMargin)),
        EdgeDistance = RecordForm<Workroom>.Length(nameof(Workroom.EdgeDistance)),
        BoxingTautness = RecordForm<Workroom>.Length(nameof(Workroom.BoxingTautness)),
        FoamOversize = RecordForm<Workroom>.Length(nameof(Workroom.FoamOversize)),
        Squaring = RecordForm<Workroom>.Length(nameof(Workroom.Squaring)),
        Kerf = RecordForm<Workroom>.Length(nameof(Workroom.Kerf));

    private static readonly LengthField<Stitch> StitchLength = RecordForm<Stitch>.Length(nameof(Stitch.StitchLength)),
        Thickness = RecordForm<Stitch>.Length(nameof(Stitch.Thickness)),
        Bight = RecordForm<Stitch>.Length(nameof(Stitch.Bight));

    /// <summary>The practice of a workroom; the usual figure is taken for each that is left out or refused.</summary>
    /// <param name="workroom">The workroom as written; null for the usual one.</param>
    /// <param name="usual">The usual practice in the order's unit.</param>
    /// <param name="findings">Takes what is wrong with the workroom.</param>
    public static WorkroomPractice Read(Workroom? workroom, WorkroomPractice usual, Findings findings)
    {
        if (workroom is null)
        {
            return usual;
        }

        Fields<Workroom> fields = RecordForm<Workroom>.Read(workroom, findings);
        // Each length that passed is taken instead of its usual figure.
        WorkroomPractice practice = usual with
        {
            SeamAllowance = fields[SeamAllowance] ?? usual.SeamAllowance,
            CuttingStep = fields[CuttingStep] ?? usual.CuttingStep,
            ZipperTurnUnder = fields[ZipperTurnUnder] ?? usual.ZipperTurnUnder,
            ZipperReturn = fields[ZipperReturn] ?? usual.ZipperReturn,
            HemFold = fields[HemFold] ?? usual.HemFold,
            TapeMargin = fields[TapeMargin] ?? usual.TapeMargin,
            EdgeDistance = fields[EdgeDistance] ?? usual.EdgeDistance,
            BoxingTautness = fields[BoxingTautness] ?? usual.BoxingTautness,
            FoamOversize = fields[FoamOversize] ?? usual.FoamOversize,
            FaceRounding = workroom.FaceRounding ?? usual.FaceRounding,
            Squaring = fields[Squaring] ?? usual.Squaring,
            Kerf = fields[Kerf] ?? usual.Kerf,
            Stitch = workroom.Stitch is { } stitch ? ReadStitch(stitch, usual.Stitches, findings.Within(nameof(workroom.Stitch))) : null,
        };
        // Numbers are taken only where every field passed; lengths are kept one by one.
        return fields.IsSound
            ? practice with
            {
                ThreadRatio = (decimal?)workroom.ThreadRatio,
                ThreadWaste = (decimal?)workroom.ThreadWaste ?? usual.ThreadWaste,
            }
            : practice;
    }

    // The stitch of seams; null where it has no type or a size was refused. Only an overedge has a bight, its width across the edge.
    private static StitchSpecification? ReadStitch(Stitch stitch, StitchPractice usual, Findings findings)
    {
        Fields<Stitch> fields = RecordForm<Stitch>.Read(stitch, findings);
        if (stitch.Type is not { } type || !Enum.IsDefined(type))
        {
            return null;
        }

        if (stitch.Bight is not null && !StitchSpecification.HasBight(type))
        {
            findings.NotApplicable(nameof(stitch.Bight), FieldTexts.NotForStitch("Bight", type));
        }

        Length? bight = StitchSpecification.HasBight(type) ? fields.Or(Bight, usual.Bight) : Length.Zero;
        return fields.Or(StitchLength, usual.StitchLength) is { } each && fields[Thickness] is { } thickness && bight is { } width
            ? new StitchSpecification(type, each, thickness, width)
            : null;
    }
}
