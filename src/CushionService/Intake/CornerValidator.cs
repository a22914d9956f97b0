using CushionService.Contract.Orders;
using CushionService.Engine.Measures;

namespace CushionService.Intake;

/// <summary>The rules of a polygon's corner.</summary>
internal sealed class CornerValidator : RecordValidator<Corner>
{
    private static readonly Length Furthest = Length.FromInches(2000);

    public CornerValidator()
        : base(
            (corner, findings) =>
            {
                Reads(corner.X, nameof(Corner.X), findings);
                Reads(corner.Y, nameof(Corner.Y), findings);
            }
        ) { }

    private static void Reads(Contract.Measure? measure, string field, Findings findings)
    {
        OrderReading order = findings.Reading;
        if (measure is null)
        {
            findings.Refuse(field, "required", $"{field} is required.");
        }
        else if (order.Length(measure) is not { } length)
        {
            findings.Refuse(field, "not-a-length", $"{field} must be a length, such as 15.5, \"15 1/2\" or \"38.5 cm\".");
        }
        else if (length > Furthest || length < -Furthest)
        {
            findings.RefuseRange(
                field,
                "out-of-range",
                $"{field} must be between {order.Text(-Furthest)} and {order.Text(Furthest)}.",
                -Furthest,
                Furthest
            );
        }
    }
}
