using CushionService.Contract.Orders;

namespace CushionService.Intake;

/// <summary>Checks the fields that have a meaning in one call only.</summary>
/// <remarks>Candidates are for a comparison and offcuts for a fit. In another call they would have no effect, and are refused rather than
/// passed over.</remarks>
internal static class PurposeIntake
{
    // It keeps nothing of an order, so that all threads share one.
    private static readonly ComparisonValidator Comparison = new();

    /// <summary>Reports what does not go with what the order is sent for. Fabric on hand is checked with its fabric.</summary>
    /// <param name="order">The order as written.</param>
    /// <param name="purpose">What it is sent for.</param>
    /// <param name="findings">Takes what is wrong with the whole order.</param>
    public static void Check(Order order, Purpose purpose, Findings findings)
    {
        // A candidate has its form in every call, so that a misspelled one is not only found in a comparison.
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

        // It is reported at the first fabric, where a form would ask for it.
        if (purpose == Purpose.Fitting && (order.Fabrics ?? []).All(fabric => fabric?.OnHand is null))
        {
            findings.Refuse("Fabrics[0].OnHand", "required", OrderTexts.OnHandRequired);
        }
    }
}
