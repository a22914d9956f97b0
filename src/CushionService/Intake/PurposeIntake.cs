using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>Checks the fields that have a meaning in one call only.</summary>
internal static class PurposeIntake
{
    private static readonly ComparisonValidator Comparison = new();

    /// <summary>Reports what does not go with what the order is sent for. Fabric on hand is checked with its fabric.</summary>
    public static void Check(Order order, Purpose purpose, Findings findings)
    {
        for (int i = 0; i < order.Candidates?.Count; i++)
        {
            if (order.Candidates[i] is { } candidate)
            {
                RecordForm<Candidate>.Read(candidate, findings.Within(nameof(order.Candidates), i));
            }
        }

        if (purpose == Purpose.Comparing)
        {
            findings.Report(Comparison.Validate(order));
        }
        else if (order.Candidates is not null)
        {
            findings.Refuse(nameof(order.Candidates), "not-applicable", OrderTexts.CandidatesElsewhere);
        }

        if (purpose == Purpose.Fitting && (order.Fabrics ?? []).All(fabric => fabric?.OnHand is null))
        {
            findings.Refuse("Fabrics[0].OnHand", "required", OrderTexts.OnHandRequired);
        }
    }
}
