using System.Globalization;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Engine.Specifications;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>A place in the order, and where rules report what they find there.</summary>
internal sealed class Findings
{
    private readonly FindingList _all;
    private readonly Findings? _whole;
    private readonly string _name = "";
    private readonly int? _index;

    /// <summary>The whole order.</summary>
    /// <param name="unit">The unit of numbers in sentences and ranges.</param>
    /// <param name="all">Takes each finding.</param>
    public Findings(LengthUnit unit, FindingList all) => (Unit, _all, Lengths) = (unit, all, new LengthStore());

    private Findings(Findings whole, string name, int? index) =>
        (Unit, _all, Lengths, _whole, _name, _index) = (whole.Unit, whole._all, whole.Lengths, whole, name, index);

    private Findings(Findings same, LengthUnit unit)
        : this(same._whole ?? same, same._name, same._index) => Unit = unit;

    /// <summary>The unit in which the order is written.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Keeps the lengths that passed.</summary>
    public LengthStore Lengths { get; }

    // Most orders are sound: a place is put into words only when something is found there.
    private string Path
    {
        get
        {
            string path = _whole is { Path: { Length: > 0 } outer } ? $"{outer}.{_name}" : _name;
            return _index is { } index ? string.Create(CultureInfo.InvariantCulture, $"{path}[{index}]") : path;
        }
    }

    /// <summary>A part of what is checked.</summary>
    /// <param name="name">The property that holds it.</param>
    /// <param name="index">Its index, where the property is a list.</param>
    public Findings Within(string name, int? index = null) => new(this, name, index);

    /// <summary>The same place, its numbers being in a unit of their own.</summary>
    public Findings In(LengthUnit unit) => new(this, unit);

    /// <summary>Reports a broken rule.</summary>
    /// <param name="field">The property of what is checked, or the path of one of its parts' (<c>Fill.Oversize</c>); empty for the
    /// whole.</param>
    /// <param name="code">A stable word for programs, in kebab case.</param>
    /// <param name="detail">What is wrong, and what would be right.</param>
    /// <param name="range">The range that the value broke; null where none applies.</param>
    public void Refuse(string field, string code, Message detail, FindingRange? range = null) =>
        _all.Refuse(new Violation(FieldNames.Pointer(PathOf(field)), code, detail, range?.Minimum, range?.Maximum));

    /// <summary>Reports something unwise. The order is made all the same.</summary>
    /// <param name="field">As of <see cref="Refuse"/>.</param>
    /// <param name="code">A stable word for programs, in kebab case.</param>
    /// <param name="detail">Why it is unwise, and what would be better.</param>
    public void Warn(string field, string code, Message detail) =>
        _all.Warn(new Violation(FieldNames.Pointer(PathOf(field)), code, detail));

    /// <summary>Reports a length that is out of range.</summary>
    /// <param name="field">As of <see cref="Refuse"/>.</param>
    /// <param name="code">A stable word for programs, in kebab case.</param>
    /// <param name="detail">What is wrong, and what would be right.</param>
    /// <param name="minimum">The smallest allowed length; null where there is none.</param>
    /// <param name="maximum">The largest allowed length; null where there is none.</param>
    public void RefuseRange(string field, string code, Message detail, Length? minimum, Length? maximum) =>
        Refuse(field, code, detail, new FindingRange(Number(minimum), Number(maximum)));

    /// <summary>Reports a field that means nothing here.</summary>
    /// <param name="field">As of <see cref="Refuse"/>.</param>
    /// <param name="detail">What it does not apply to.</param>
    public void NotApplicable(string field, Message detail) => Refuse(field, "not-applicable", detail);

    /// <summary>Reports what one of FluentValidation's validators found.</summary>
    /// <exception cref="InvalidOperationException">A rule has no message of ours.</exception>
    public void Report(ValidationResult result)
    {
        foreach (ValidationFailure failure in result.Errors)
        {
            if (failure.CustomState is not RuleDetail detail)
            {
                throw new InvalidOperationException($"The rule {failure.ErrorCode} of {failure.PropertyName} has no detail.");
            }

            Refuse(failure.PropertyName, failure.ErrorCode, detail.Message, detail.Range);
        }
    }

    // A limit as the caller would write it.
    private double? Number(Length? length) => length is { } known ? (double)known.In(Unit) : null;

    // The place and the field as a path; either may be empty.
    private string PathOf(string field)
    {
        string path = Path;
        return path.Length == 0 || field.Length == 0 ? path + field : $"{path}.{field}";
    }
}
