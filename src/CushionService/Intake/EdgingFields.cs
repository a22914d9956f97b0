using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Intake;

/// <summary>Which fields each edging takes.</summary>
/// <remarks>A welt has a cord, a ruffle a fullness and a depth, a flange and flat piping a depth, a bought trim a size, topstitching
/// its rows; plain seams have nothing.</remarks>
internal static class EdgingFields
{
    /// <summary>Reports each field that means nothing to the edging, a depth that is missing, and a seam that is listed twice.</summary>
    /// <param name="edging">The edging as written.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="findings">Takes what is wrong with the edging.</param>
    public static void Check(Edging edging, EdgingKind kind, Findings findings)
    {
        bool welt = kind == EdgingKind.Welt,
            ruffle = kind == EdgingKind.Ruffle,
            flange = kind == EdgingKind.Flange,
            piping = kind == EdgingKind.FlatPiping,
            topstitched = kind == EdgingKind.Topstitched,
            bought = kind is EdgingKind.LipCord or EdgingKind.Fringe or EdgingKind.Gimp;
        Only(welt || kind == EdgingKind.LipCord, edging.CordDiameter is not null, nameof(edging.CordDiameter));
        Only(welt || piping, edging.Cut is not null, nameof(edging.Cut));
        Only(kind != EdgingKind.Plain, edging.At is not null, nameof(edging.At));
        Only(welt || ruffle || flange || piping, edging.Fabric is not null, nameof(edging.Fabric));
        Only(ruffle, edging.Fullness is not null, nameof(edging.Fullness));
        Only(ruffle || flange || piping || kind is EdgingKind.Fringe or EdgingKind.Gimp, edging.Depth is not null, nameof(edging.Depth));
        Only(ruffle, edging.Lining is not null, nameof(edging.Lining));
        Only(bought, edging.Attached is not null, nameof(edging.Attached));
        Only(topstitched, edging.Distance is not null, nameof(edging.Distance));
        Only(topstitched, edging.Rows is not null, nameof(edging.Rows));
        // A welt is as deep as its cord is thick; of the others nothing says how deep they are.
        if ((ruffle || flange) && edging.Depth is null)
        {
            findings.Refuse(nameof(edging.Depth), "required", FieldTexts.RequiredForEdging("Depth", kind));
        }

        // Two edgings in one seam would be sewn into each other.
        if (edging.At is { } at && at.Distinct().Count() < at.Count)
        {
            findings.Refuse(nameof(edging.At), "duplicate", TrimTexts.EdgingTwice);
        }

        void Only(bool applies, bool given, string field)
        {
            if (given && !applies)
            {
                findings.NotApplicable(field, FieldTexts.NotForEdging(FieldNames.Words(field), kind));
            }
        }
    }
}
