using CushionService.Contract.Orders;
using CushionService.Engine.Specifications.Fabrics;

namespace CushionService.Intake;

/// <summary>Checks what of a cushion is matched to the repeat of its fabric, and specifies it.</summary>
/// <remarks>On a fabric without a repeat the answer is the same whatever is asked.</remarks>
internal static class MatchIntake
{
    /// <summary>What is matched; the usual where the order says nothing.</summary>
    /// <param name="match">The matching as written; null for the usual.</param>
    /// <param name="findings">Takes what is wrong with the matching.</param>
    public static MatchSpecification Read(Matching? match, Findings findings)
    {
        if (match is not null)
        {
            RecordForm<Matching>.Read(match, findings);
        }

        MatchSpecification usual = MatchSpecification.Usual;
        FaceMatch faces = match?.Faces ?? usual.Faces;
        // The boxing carries on what the faces show: where they are free there is nothing to carry on.
        if (faces == FaceMatch.Free && match?.Boxing is { } carried and not BoxingMatch.Free)
        {
            findings.Refuse(nameof(match.Boxing), "not-combinable", ShapeTexts.BoxingMatch(carried));
        }

        return new MatchSpecification(
            faces,
            match?.Underside ?? usual.Underside,
            match?.Boxing ?? (faces == FaceMatch.Free ? BoxingMatch.Free : usual.Boxing)
        );
    }
}
