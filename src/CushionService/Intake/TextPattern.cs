using System.Text.RegularExpressions;
using CushionService.Contract.Orders;
using CushionService.Engine.Messages;

namespace CushionService.Intake;

/// <summary>The contract's patterns as regular expressions of .NET.</summary>
/// <remarks>The contract publishes patterns as JSON Schema does (ECMA 262), where <c>$</c> is the end of the text. To .NET <c>$</c> also
/// matches before a newline at the end, which amounts and ids must not have; <c>\z</c> does not.</remarks>
internal static class TextPattern
{
    /// <summary>What to tell of a text that does not match.</summary>
    /// <param name="field">The field, at the start of a sentence.</param>
    /// <param name="pattern">The pattern, as the contract publishes it.</param>
    public static Message Detail(string field, string pattern) =>
        pattern switch
        {
            Identifier.Pattern => FieldTexts.Identifier(field),
            Amount.Pattern => FieldTexts.Amount(field),
            CurrencyCode.Pattern => FieldTexts.CurrencyCode(field),
            DueDay.Pattern => FieldTexts.Day(field),
            HexColour.Pattern => FieldTexts.Colour(field),
            _ => FieldTexts.Pattern(field, pattern),
        };

    /// <summary>A pattern that matches the same texts as the published one.</summary>
    /// <param name="pattern">A pattern from <c>^</c> to <c>$</c>.</param>
    /// <exception cref="ArgumentException">The pattern leaves an end open.</exception>
    public static Regex Of(string pattern) =>
        // An anchor in the middle would be taken for one at an end, so both ends are required.
        pattern is ['^', .. var inner, '$']
            ? new Regex($@"\A{inner}\z", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant)
            : throw new ArgumentException("A pattern says what the whole text is, from ^ to $.", nameof(pattern));
}
