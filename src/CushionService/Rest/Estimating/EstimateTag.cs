using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications.Fabrics;
using CushionService.Intake;
using CushionService.Languages;
using CushionService.Nesting;
using CushionService.Wording;
using Microsoft.Extensions.Primitives;

namespace CushionService.Rest.Estimating;

/// <summary>The entity tag of an estimate: the same for every spelling of the same order, another for every other order,
/// language or engine (RFC 9110, section 8.8.3).</summary>
internal static class EstimateTag
{
    // Bytes of the digest that are kept: 144 bits, 24 characters in base 64 without padding.
    private const int Kept = 18;

    // The same sources make the same modules, so that every instance of a release gives the same tags.
    private static readonly string Engine = string.Join(
        ' ',
        EngineVersion.Current,
        typeof(EstimateTag).Module.ModuleVersionId,
        typeof(Length).Module.ModuleVersionId,
        typeof(Effort).Module.ModuleVersionId
    );

    /// <summary>The tag of an order, in its quotation marks.</summary>
    /// <param name="flat">The order. It need not be sound: a tag is given out with an answer only, so nobody has that
    /// of an order which breaks a rule.</param>
    /// <param name="language">The language of the answer's sentences.</param>
    /// <param name="fields">The fields of the answer that are asked for; null for all.</param>
    /// <returns>The tag; null when a parameter is unknown or given twice, or a length cannot be read.</returns>
    public static string? Of(FlatOrder flat, Language language, FieldTree? fields = null)
    {
        if (!flat.IsRead)
        {
            return null;
        }

        List<string> lines = [Engine, LanguageTags.Of(language)];
        foreach (FlatField field in FlatField.All)
        {
            if (flat[field.Name] is { } value)
            {
                if (Canonical(value, field, flat) is not { } canonical)
                {
                    return null;
                }

                lines.Add($"{field.Name}={canonical}");
            }
        }

        if (fields is not null)
        {
            lines.Add($"fields={string.Join(',', fields.Paths())}");
        }

        byte[] digest = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', lines)));
        return $"\"{Base64Url.EncodeToString(digest.AsSpan(0, Kept))}\"";
    }

    /// <summary>The tag of the bytes as they are sent: another for each encoding (RFC 9110, section 8.8.3.3).</summary>
    /// <param name="encoding">As <c>br</c>; null for none.</param>
    /// <param name="tag">The tag of the order.</param>
    public static string In(string? encoding, string tag) => encoding is null ? tag : $"{tag[..^1]}-{encoding}\"";

    /// <summary>Whether a tag is that of an order, in any encoding. All tags of orders are of one length.</summary>
    /// <param name="held">The tag that a caller holds.</param>
    /// <param name="tag">The tag of the order.</param>
    public static bool IsOf(StringSegment held, string tag) => held.StartsWith(tag[..^1], StringComparison.Ordinal);

    // One spelling for each value: lengths in nanometres, numbers without needless zeros, all else as it was given.
    private static string? Canonical(string value, FlatField field, FlatOrder flat)
    {
        if (field.Type == typeof(Measure))
        {
            LengthUnit unit = field.IsOfSale ? FabricTrade.LengthOf(flat.SaleUnit ?? SaleUnit.Yd) : OrderContext.UnitOf(flat.Units);
            return Measure.Of(value).TryRead(unit, out Length length) ? length.Nanometres.ToString(CultureInfo.InvariantCulture) : null;
        }

        return field.Type.IsPrimitive && FlatOrder.Number(value) is { } number
            ? number.ToString("0.#############################", CultureInfo.InvariantCulture)
            : value;
    }
}
