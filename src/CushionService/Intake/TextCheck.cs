using System.ComponentModel.DataAnnotations;
using System.Reflection;
using System.Text.RegularExpressions;

namespace CushionService.Intake;

/// <summary>Checks the length and the pattern of a text.</summary>
/// <typeparam name="T">The record that has the text.</typeparam>
/// <param name="property">The property that holds it.</param>
/// <remarks>The pattern is compiled once, to an automaton without backtracking: its time is in proportion to the text, whatever the text
/// is.</remarks>
internal sealed class TextCheck<T>(PropertyInfo property) : FieldCheck<T>(property)
{
    private readonly Func<T, string?> _get = Getters.Of<T, string?>(property);

    // In UTF-16 code units, as the contract counts them.
    private readonly int? _longest = property.GetCustomAttribute<MaxLengthAttribute>()?.Length;
    private readonly string? _pattern = property.GetCustomAttribute<RegularExpressionAttribute>()?.Pattern;
    private readonly Regex? _form = property.GetCustomAttribute<RegularExpressionAttribute>() is { } form
        ? TextPattern.Of(form.Pattern)
        : null;

    /// <inheritdoc />
    public override bool Passes(T record, int start, Findings findings) =>
        _get(record) is not { } text ? Missing(findings)
        : text.Length > _longest ? Fails(findings, "too-long", FieldTexts.TooLong(Words, _longest.Value), new FindingRange(null, _longest))
        : _form?.IsMatch(text) != false || Fails(findings, "bad-form", TextPattern.Detail(Words, _pattern!));
}
