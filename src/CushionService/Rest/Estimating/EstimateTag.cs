using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Intake;
using CushionService.Nesting;
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
        typeof(Effort).Module.ModuleVersionId
    );

    /// <summary>The tag of an order, in its quotation marks; null when a parameter is at fault or a length cannot be read. The order itself need not be
    /// sound: one that is not is never given its tag.</summary>
    public static string? Of(FlatOrder flat)
    {
        if (!flat.IsRead)
        {
            return null;
        }

        LengthUnit unit = OrderContext.UnitOf(flat.Units),
            sale = FabricTrade.LengthOf(flat.SaleUnit ?? SaleUnit.Yd);
        StringBuilder canonical = new(Engine, 1024);
        for (int i = 0; i < FlatField.All.Length; i++)
        {
            if (flat[i] is { } value && !Append(canonical, value, FlatField.All[i], unit, sale))
            {
                return null;
            }
        }

        Span<byte> text = stackalloc byte[1024];
        string words = canonical.ToString();
        text =
            Encoding.UTF8.GetByteCount(words) <= text.Length ? text[..Encoding.UTF8.GetBytes(words, text)] : Encoding.UTF8.GetBytes(words);
        Span<byte> digest = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(text, digest);
        return $"\"{Base64Url.EncodeToString(digest[..18])}\"";
    }

    private static bool Append(StringBuilder canonical, string value, FlatField field, LengthUnit unit, LengthUnit sale)
    {
        canonical.Append('\n').Append(field.Name).Append('=');
        if (field.Type == typeof(Measure))
        {
            if (!Measure.Of(value).TryRead(field.IsOfSale ? sale : unit, out Length length))
            {
                return false;
            }

            canonical.Append(length.Nanometres);
        }
        else if (field.Type.IsPrimitive && FlatOrder.Number(value) is { } number)
        {
            canonical.Append(CultureInfo.InvariantCulture, $"{number:0.#############################}");
        }
        else
        {
            canonical.Append(value);
        }

        return true;
    }
}
