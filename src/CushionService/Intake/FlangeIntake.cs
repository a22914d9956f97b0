using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Shapes;

namespace CushionService.Intake;

/// <summary>Checks the flange of a flanged cushion, and specifies it.</summary>
/// <remarks>The width is finished, from the seam line to the edge. A double flange is two layers with their edges turned in; a single one
/// has no turning.</remarks>
internal static class FlangeIntake
{
    private static readonly LengthField<OxfordFlange> Width = RecordForm<OxfordFlange>.Length(nameof(OxfordFlange.Width)),
        Turning = RecordForm<OxfordFlange>.Length(nameof(OxfordFlange.Turning));

    /// <summary>The flange; null where there is none, or a length was refused.</summary>
    /// <param name="flange">The flange as written; null for none.</param>
    /// <param name="body">The cushion.</param>
    public static FlangeSpecification? Read(OxfordFlange? flange, CushionBody body)
    {
        if (flange is null)
        {
            return null;
        }

        Findings at = body.At.Within(nameof(Cushion.Flange));
        Fields<OxfordFlange> fields = RecordForm<OxfordFlange>.Read(flange, at);
        FlangeLayers layers = flange.Layers ?? FlangeLayers.Single;
        if (flange.Turning is not null && layers == FlangeLayers.Single)
        {
            at.NotApplicable(Turning.Name, FieldTexts.NotForSingleFlange(Turning.Name));
        }

        return fields[Width] is { } width && fields.Or(Turning, body.Practice.Shapes.FlangeTurning) is { } turning
            ? new FlangeSpecification(layers, width, layers == FlangeLayers.Double ? turning : Length.Zero)
            : null;
    }
}
