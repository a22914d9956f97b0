using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Nesting;

namespace CushionService.Intake;

/// <summary>Checks that each part of an order names a fabric that the order has, and that each fabric is used.</summary>
/// <remarks>An order of one fabric need not name it. With several, each cushion and each piece must say which; what is left out of a
/// cushion's fabrics is then as its top.</remarks>
internal sealed class FabricUse
{
    // Each fabric's id, and whether something is made of it.
    private readonly Dictionary<string, bool> _used;
    private readonly Findings _findings;

    private FabricUse(IReadOnlyList<Fabric?> fabrics, Findings findings)
    {
        (_used, _findings) = (new(fabrics.Count, StringComparer.Ordinal), findings);
        // Of two fabrics with one id the second has been reported: both are one name here.
        for (int i = 0; i < fabrics.Count; i++)
        {
            if (fabrics[i]?.Id is { } id)
            {
                _used[id] = false;
            }
        }
    }

    /// <summary>Reports every name that is unknown or missing, and warns of every fabric that nothing is made of.</summary>
    /// <param name="context">The order, and its only fabric.</param>
    /// <param name="findings">Takes what is wrong with the whole order.</param>
    public static void Check(OrderContext context, Findings findings)
    {
        // Without fabrics every name would be unknown: that they are missing is said once.
        if (context.Order.Fabrics is not { Count: > 0 } fabrics)
        {
            return;
        }

        FabricUse use = new(fabrics, findings);
        foreach (OrderedCushion cushion in context.Cushions)
        {
            use.Of(cushion.Written, context.OnlyFabric, cushion.At);
        }

        // Pieces of the maker's own, cut with the cushions.
        for (int i = 0; i < context.Order.Pieces?.Count; i++)
        {
            if (context.Order.Pieces[i] is { } piece)
            {
                use.Of(piece, context, findings.Within(nameof(Order.Pieces), i));
            }
        }

        // Only now is every use known.
        use.WarnOfRest(fabrics);
    }

    // Every place of a cushion that can name a fabric. Without any the cushion is of the only fabric, if there is one.
    private void Of(Cushion cushion, string? only, Findings at)
    {
        // A cushion that names some parts takes its top's fabric for the rest, and has been checked by its form.
        if (cushion.Fabrics is null)
        {
            Needs(only, "Fabrics", at);
        }

        Names(cushion.Fabrics?.Top, "Fabrics.Top", at);
        Names(cushion.Fabrics?.Bottom, "Fabrics.Bottom", at);
        Names(cushion.Fabrics?.Sides, "Fabrics.Sides", at);
        Names(cushion.Ties?.Fabric, "Ties.Fabric", at);
        Names(cushion.Straps?.Fabric, "Straps.Fabric", at);
        Names(cushion.Pocket?.Fabric, "Pocket.Fabric", at);
        Names(cushion.Edging?.Fabric, "Edging.Fabric", at);
        Names(cushion.InnerCover?.Fabric, "InnerCover.Fabric", at);
        Names(cushion.Handle?.Fabric, "Handle.Fabric", at);
    }

    // A print or a pile that runs one way fixes a piece as it is drawn, whatever turns it allows.
    private void Of(LoosePiece piece, OrderContext context, Findings at)
    {
        string? id = piece.Fabric ?? context.OnlyFabric;
        Needs(id, nameof(piece.Fabric), at);
        if (context.Fabric(id) is { OneWay: true } fabric && piece.Rotation is not (null or Rotations.None))
        {
            at.Warn(nameof(piece.Rotation), "one-way-fabric", OrderTexts.OneWayPiece(fabric.Label ?? id!));
        }
    }

    // Reports a name that is missing, or unknown.
    private void Needs(string? id, string field, Findings at)
    {
        if (id is null)
        {
            at.Refuse(field, "required", FieldTexts.RequiredWithFabrics(FieldNames.LastWords(field)));
        }

        Names(id, field, at);
    }

    // Reports a name that is unknown, and marks the fabric as used.
    private void Names(string? id, string field, Findings at)
    {
        if (id is null)
        {
            return;
        }

        if (_used.ContainsKey(id))
        {
            _used[id] = true;
        }
        else
        {
            at.Refuse(field, "unknown-fabric", OrderTexts.UnknownFabric(id));
        }
    }

    // A fabric that nothing is made of is bought for nothing, or its name is misspelled somewhere.
    private void WarnOfRest(IReadOnlyList<Fabric?> fabrics)
    {
        for (int i = 0; i < fabrics.Count; i++)
        {
            if (fabrics[i]?.Id is { } id && !_used[id])
            {
                _findings.Warn($"{nameof(Order.Fabrics)}[{i}]", "unused-fabric", OrderTexts.UnusedFabric(fabrics[i]!.Label ?? id));
            }
        }
    }
}
