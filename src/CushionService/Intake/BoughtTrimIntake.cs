using System.Collections.Immutable;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Practices;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Checks a bought trim, and specifies it.</summary>
/// <remarks>A lip cord has a lip to be sewn in by, a gimp none; a fringe's heading may lie in the seam or over it.</remarks>
internal static class BoughtTrimIntake
{
    private static readonly LengthField<Edging> CordDiameter = RecordForm<Edging>.Length(nameof(Edging.CordDiameter)),
        Depth = RecordForm<Edging>.Length(nameof(Edging.Depth));

    /// <summary>The trim; null where its size or its fastening was refused.</summary>
    /// <param name="edging">The edging as written.</param>
    /// <param name="fields">Its fields.</param>
    /// <param name="kind">Lip cord, fringe or gimp.</param>
    /// <param name="places">The seams that it follows.</param>
    /// <param name="body">The cushion.</param>
    /// <param name="findings">Takes what is wrong with the edging.</param>
    public static BoughtTrimSpecification? Read(
        Edging edging,
        Fields<Edging> fields,
        EdgingKind kind,
        ImmutableArray<EdgingPlace> places,
        CushionBody body,
        Findings findings
    )
    {
        TrimPractice usual = body.Practice.Trims;
        TrimAttachment fastened = kind == EdgingKind.Gimp ? TrimAttachment.SewnOn : TrimAttachment.SewnIn,
            attached = edging.Attached ?? fastened;
        if (kind != EdgingKind.Fringe && attached != fastened)
        {
            findings.Refuse(nameof(edging.Attached), "not-combinable", TrimTexts.AttachedNotPossible(kind, attached, fastened));
            return null;
        }

        Length? size = kind switch
        {
            EdgingKind.LipCord => fields.Or(CordDiameter, usual.LipCordDiameter),
            EdgingKind.Fringe => fields.Or(Depth, usual.FringeDepth),
            _ => fields.Or(Depth, usual.GimpWidth),
        };
        return size is { } sized ? new BoughtTrimSpecification(places, kind, attached, sized) : null;
    }
}
