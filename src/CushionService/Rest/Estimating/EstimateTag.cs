using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Engine.Measures;
using CushionService.Nesting;
using CushionService.Specifying;
using CushionService.Wording;

namespace CushionService.Rest.Estimating;

/// <summary>The entity tag of an estimate: the same for every spelling of the same order, another for every other order or engine (RFC 9110,
/// section 8.8.3).</summary>
internal static class EstimateTag
{
    // The same sources make the same modules, so that every instance of a release gives the same tags.
    private static readonly string Engine = string.Join(
        ' ',
        EngineVersion.Current,
        typeof(EstimateTag).Module.ModuleVersionId,
        typeof(Length).Module.ModuleVersionId,
        typeof(Effort).Module.ModuleVersionId);

    /// <summary>The tag of an order, in its quotation marks; null when the order cannot be read.</summary>
    public static string? Of(FlatOrder flat)
    {
        if (flat.Reading.Order is not { } order || flat.Reading.Violations.Count > 0)
        {
            return null;
        }

        OrderReading reading = new(order);
        StringBuilder canonical = new(Engine);
        foreach (FlatField field in FlatField.All)
        {
            if (flat.Values.TryGetValue(field.Name, out string? value))
            {
                if (Canonical(value, field, reading) is not { } one)
                {
                    return null;
                }

                canonical.Append('\n').Append(field.Name).Append('=').Append(one);
            }
        }

        byte[] digest = SHA256.HashData(Encoding.UTF8.GetBytes(canonical.ToString()));
        return $"\"{Base64Url.EncodeToString(digest.AsSpan(0, 18))}\"";
    }

    private static string? Canonical(string value, FlatField field, OrderReading reading)
    {
        if (field.Type == typeof(Measure))
        {
            LengthUnit unit = field.Property.DeclaringType == typeof(Sale) ? SaleReading.UnitOf(reading.Order.Fabrics![0].Sold!) : reading.Unit;
            return OrderReading.Length(Measure.Of(value), unit)?.Nanometres.ToString();
        }

        return field.Type.IsPrimitive && FlatOrder.Number(value) is { } number ? number.ToString("0.#############################") : value;
    }
}
