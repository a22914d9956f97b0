using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>The rules of an edging by itself: which fields its kind takes.</summary>
internal sealed class EdgingValidator : RecordValidator<Edging>
{
    public EdgingValidator()
        : base(
            AttributeRules.Of<Edging>(),
            (edging, findings) =>
            {
                if (edging.Kind is not { } kind || !Enum.IsDefined(kind))
                {
                    return;
                }

                bool welt = kind == EdgingKind.Welt,
                    ruffle = kind == EdgingKind.Ruffle,
                    flange = kind == EdgingKind.Flange;
                Only(welt, edging.CordDiameter is not null, nameof(Edging.CordDiameter));
                Only(welt, edging.Cut is not null, nameof(Edging.Cut));
                Only(welt || ruffle || flange, edging.At is not null, nameof(Edging.At));
                Only(welt || ruffle || flange, edging.Fabric is not null, nameof(Edging.Fabric));
                Only(ruffle, edging.Fullness is not null, nameof(Edging.Fullness));
                Only(ruffle || flange, edging.Depth is not null, nameof(Edging.Depth));
                Only(ruffle, edging.Lining is not null, nameof(Edging.Lining));
                if ((ruffle || flange) && edging.Depth is null)
                {
                    findings.Refuse(nameof(Edging.Depth), "required", $"Depth is required for a {CushionValidator.Json(kind)}.");
                }

                if (edging.At is { } at && at.Distinct().Count() < at.Count)
                {
                    findings.Refuse(nameof(Edging.At), "duplicate", "A seam may be named only once.");
                }

                void Only(bool applies, bool given, string field)
                {
                    if (given && !applies)
                    {
                        findings.Refuse(
                            field,
                            "not-applicable",
                            $"{FieldNames.Words(field)} does not apply to edging {CushionValidator.Json(kind)}."
                        );
                    }
                }
            }
        ) { }
}
