using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Nesting;

namespace CushionService.Intake;

/// <summary>Checks that each part of an order names a fabric that the order has, and that each fabric is used.</summary>
internal sealed class FabricUse
{
    private readonly Dictionary<string, bool> _used;
    private readonly Findings _findings;

    private FabricUse(IReadOnlyList<Fabric?> fabrics, Findings findings)
    {
        (_used, _findings) = (new(fabrics.Count, StringComparer.Ordinal), findings);
        for (int i = 0; i < fabrics.Count; i++)
        {
            if (fabrics[i]?.Id is { } id)
            {
                _used[id] = false;
            }
        }
    }

    /// <summary>Reports every name that is unknown or missing, and warns of every fabric that nothing is made of.</summary>
    public static void Check(OrderContext context, Findings findings)
    {
        if (context.Order.Fabrics is not { Count: > 0 } fabrics)
        {
            return;
        }

        FabricUse use = new(fabrics, findings);
        for (int i = 0; i < context.Order.Cushions?.Count; i++)
        {
            if (context.Order.Cushions[i] is { } cushion)
            {
                use.Of(cushion, context.OnlyFabric, findings.Within(nameof(Order.Cushions), i));
            }
        }

        for (int i = 0; i < context.Order.Pieces?.Count; i++)
        {
            if (context.Order.Pieces[i] is { } piece)
            {
                use.Of(piece, context, findings.Within(nameof(Order.Pieces), i));
            }
        }

        use.WarnOfRest(fabrics);
    }

    private void Of(Cushion cushion, string? only, Findings at)
    {
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

    private void Of(LoosePiece piece, OrderContext context, Findings at)
    {
        string? id = piece.Fabric ?? context.OnlyFabric;
        Needs(id, nameof(piece.Fabric), at);
        if (context.Fabric(id) is { OneWay: true } && piece.Rotation is not (null or Rotations.None))
        {
            at.Warn(nameof(piece.Rotation), "one-way-fabric", OrderTexts.OneWayPiece(id!));
        }
    }

    private void Needs(string? id, string field, Findings at)
    {
        if (id is null)
        {
            at.Refuse(field, "required", FieldTexts.RequiredWithFabrics(FieldNames.LastWords(field)));
        }

        Names(id, field, at);
    }

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

    private void WarnOfRest(IReadOnlyList<Fabric?> fabrics)
    {
        for (int i = 0; i < fabrics.Count; i++)
        {
            if (fabrics[i]?.Id is { } id && !_used[id])
            {
                _findings.Warn($"{nameof(Order.Fabrics)}[{i}]", "unused-fabric", OrderTexts.UnusedFabric(id));
            }
        }
    }
}
