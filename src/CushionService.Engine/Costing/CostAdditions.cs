using System.Collections.Immutable;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Pricing;

namespace CushionService.Engine.Costing;

/// <summary>What is charged on top of materials and labour, in this order: contingency on the materials, overhead, the gain on or in all of
/// that; then what the customer reads: free lines, fees, the discount, what is missing to the least price, the rounding, and the tax. Each
/// is rounded half up to the smallest coin. The order is common practice, no source.</summary>
internal sealed class CostAdditions
{
    private readonly ImmutableArray<CostAddition>.Builder _additions = ImmutableArray.CreateBuilder<CostAddition>();
    private readonly CostingSpecification _costing;
    private readonly CostSums _sums;

    // All so far: each addition changes what the next one is a share of.
    private Money _running;

    private CostAdditions(CostingSpecification costing, CostSums sums) =>
        (_costing, _sums, _running) = (costing, sums, sums.Materials + sums.Labour);

    /// <summary>The additions of an order, without those that are nothing.</summary>
    /// <param name="order">The order, with its costing and its free lines.</param>
    /// <param name="sums">What its materials and its labour cost.</param>
    public static ImmutableArray<CostAddition> Of(OrderSpecification order, CostSums sums)
    {
        var additions = new CostAdditions(order.Costing, sums);
        additions.AddCosts();
        additions.AddGain();
        foreach (FreeLineSpecification line in order.Lines)
        {
            additions.AddTimes(CostAdditionKind.Line, line.Label, line.Quantity, line.Amount, CostBasis.All);
        }

        foreach (ChargeSpecification charge in order.Costing.Charges)
        {
            (int times, CostBasis basis) = charge.Per switch
            {
                ChargeBasis.Cushion => (sums.Cushions, CostBasis.Cushions),
                ChargeBasis.Cut => (sums.Cuts, CostBasis.Fabric),
                _ => (1, CostBasis.All),
            };
            additions.AddTimes(CostAdditionKind.Charge, charge.Label, times, charge.Amount, basis);
        }

        additions.AddPrice();
        return additions._additions.ToImmutable();
    }

    private void AddCosts()
    {
        Money materials = _sums.Materials;
        Add(
            CostAdditionKind.Contingency,
            (_costing.Contingency * materials).RoundHalfUp(),
            CostTexts.Contingency(Fraction.Of(_costing.Contingency), materials),
            CostBasis.Materials
        );
        Add(
            CostAdditionKind.Overhead,
            (_costing.Overhead * _running).RoundHalfUp(),
            CostTexts.ShareOf(Fraction.Of(_costing.Overhead), _running)
        );
        if (_costing.OverheadHourly is { } hourly)
        {
            Add(
                CostAdditionKind.Overhead,
                LabourPricing.Hours(_sums.Minutes, hourly),
                CostTexts.OverheadHourly(_sums.Minutes, hourly),
                CostBasis.Labour
            );
        }
    }

    private void AddGain()
    {
        Money cost = _running;
        Add(
            CostAdditionKind.Markup,
            Markup(cost, _costing.Markup).RoundHalfUp() - cost,
            CostTexts.Markup(Fraction.Of(_costing.Markup), cost)
        );
        cost = _running;
        Money price = Margin(cost, _costing.Margin).RoundHalfUp();
        Add(CostAdditionKind.Margin, price - cost, CostTexts.Margin(Fraction.Of(_costing.Margin), cost, _costing.Margin, price));
    }

    // A fabric costs what its lines say: a discount on it is a share of them, before any gain.
    private void AddPrice()
    {
        if (_costing.Discount is { } discount)
        {
            bool fabric = discount.On == DiscountBase.Fabric;
            Money basis = fabric ? _sums.Fabric : _running;
            Add(
                CostAdditionKind.Discount,
                -1 * discount.Of(basis),
                discount.Share is { } share
                    ? CostTexts.ShareOff(Fraction.Of(share), basis, fabric)
                    : CostTexts.AmountOff(discount.Amount!.Value, basis, fabric, all: discount.Amount.Value.Amount > basis.Amount),
                fabric ? CostBasis.Fabric : CostBasis.All
            );
        }

        if (_costing.Minimum is { } least && _running.Amount < least.Amount)
        {
            Add(CostAdditionKind.Minimum, least.RoundHalfUp() - _running, CostTexts.Minimum(_running, least));
        }

        if (_costing.Rounding is { } rounding)
        {
            Add(
                CostAdditionKind.Rounding,
                rounding.Of(_running, _costing.Minimum) - _running,
                CostTexts.Rounding(_running, rounding.Direction == RoundingDirection.Up, rounding.Step)
            );
        }

        if (_costing.Tax is { } tax)
        {
            Add(
                CostAdditionKind.Tax,
                (tax.Rate * _running).RoundHalfUp(),
                CostTexts.ShareOf(Fraction.Of(tax.Rate), _running),
                label: tax.Label
            );
        }
    }

    // What is sold or charged a number of times.
    private void AddTimes(CostAdditionKind kind, string label, decimal times, Money amount, CostBasis basis)
    {
        Money all = (times * amount).RoundHalfUp();
        if (all.Amount != 0)
        {
            Add(kind, all, CostTexts.Times(times, amount), basis, label);
            _additions[^1] = _additions[^1] with { Quantity = times, UnitPrice = amount };
        }
    }

    private void Add(CostAdditionKind kind, Money amount, Message because, CostBasis basis = CostBasis.All, string? label = null)
    {
        if (amount.Amount != 0)
        {
            _additions.Add(new CostAddition(kind, amount, because) { Basis = basis, Label = label });
            _running += amount;
        }
    }

    /// <summary>The selling price at a markup on cost: cost × (1 + m) (general arithmetic).</summary>
    /// <param name="cost">What the order costs to make.</param>
    /// <param name="markup">A share of the cost, at least zero.</param>
    /// <returns>Not rounded.</returns>
    public static Money Markup(Money cost, decimal markup) => (1 + markup) * cost;

    /// <summary>The selling price at a margin on the price: cost / (1 − g), g below 1 (general arithmetic).</summary>
    /// <param name="cost">What the order costs to make.</param>
    /// <param name="margin">A share of the price, at least zero and below 1.</param>
    /// <returns>Not rounded.</returns>
    /// <exception cref="DivideByZeroException">The margin is 1.</exception>
    public static Money Margin(Money cost, decimal margin) => cost with { Amount = cost.Amount / (1 - margin) };
}
