using System.Text.RegularExpressions;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Intake;

/// <summary>The rules of what is charged beyond materials.</summary>
internal sealed class CostingValidator : RecordValidator<Costing>
{
    private static readonly Regex IsAmount = TextPattern.Of(Amount.Pattern);

    public CostingValidator()
        : base(
            AttributeRules.Of<Costing>(),
            Rules.Part(nameof(Costing.Labour), (Costing costing) => costing.Labour, new LabourValidator()),
            Rules.Part(nameof(Costing.Rounding), (Costing costing) => costing.Rounding, new AttributeValidator<PriceRounding>()),
            (costing, findings) =>
            {
                if (costing is { Markup: not null, Margin: not null })
                {
                    findings.Refuse(nameof(Costing.Margin), "not-combinable", "A price is made by a markup or by a margin, not by both.");
                }

                if (
                    costing.Rounding?.Step is { } step
                    && IsAmount.IsMatch(step)
                    && findings.Reading.Currency is { } currency
                    && !IsCoins(PriceReading.Amount(step, currency))
                )
                {
                    double coin = Math.Pow(10, -currency.Decimals);
                    findings.Refuse(
                        "Rounding.Step",
                        "out-of-range",
                        $"Step must be in whole coins of {currency.Code}, and at least one.",
                        new FindingRange(coin, null)
                    );
                }
            }
        ) { }

    private static bool IsCoins(Money step) => step.Amount > 0 && step == step.RoundHalfUp();

    private sealed class LabourValidator : RecordValidator<Labour>
    {
        public LabourValidator()
            : base(
                AttributeRules.Of<Labour>(),
                Rules.Entries(nameof(Labour.Operations), (Labour labour) => labour.Operations, new AttributeValidator<OperationTime>()),
                (labour, findings) =>
                {
                    HashSet<string> seen = [];
                    foreach ((int i, OperationTime? time) in (labour.Operations ?? []).Index())
                    {
                        if (time?.Operation is not { } word)
                        {
                            continue;
                        }

                        string at = $"{nameof(Labour.Operations)}[{i}].{nameof(OperationTime.Operation)}";
                        if (!Operation.All.Contains(new Operation(word)))
                        {
                            findings.Refuse(at, "unknown-value", $"Operation must be one of {string.Join(", ", Operation.All)}.");
                        }
                        else if (!seen.Add(word))
                        {
                            findings.Refuse(at, "duplicate", $"Operation {word} stands twice in operations.");
                        }
                    }
                }
            ) { }
    }
}
