using System.Globalization;
using CushionService.Contract;
using CushionService.Engine.Measures;
using CushionService.Engine.Specifications;
using FluentValidation;
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

    /// <summary>A length in the order's unit, with its symbol.</summary>
    public string Text(Length length) => LengthText.Format(length, Unit);

    /// <summary>Reports a broken rule at a field of what is checked, or a field of its parts.</summary>
    public void Refuse(string field, string code, string detail, FindingRange? range = null) =>
        _all.Refuse(new Violation(FieldNames.Pointer(PathOf(field)), code, detail, range?.Minimum, range?.Maximum));

    /// <summary>Reports something unwise.</summary>
    public void Warn(string field, string code, string detail) => _all.Warn(new Violation(FieldNames.Pointer(PathOf(field)), code, detail));

    /// <summary>Reports a length that is out of range.</summary>
    public void RefuseRange(string field, string code, string detail, Length? minimum, Length? maximum) =>
        Refuse(field, code, detail, new FindingRange(Number(minimum), Number(maximum)));

    /// <summary>Reports a field that means nothing here.</summary>
    /// <param name="field">The field.</param>
    /// <param name="to">What it does not apply to ("closure zipper").</param>
    public void NotApplicable(string field, string to) =>
        Refuse(field, "not-applicable", $"{FieldNames.LastWords(field)} does not apply to {to}. Leave it out.");

    /// <summary>Reports what a validator found.</summary>
    public void Report(ValidationResult result)
    {
        foreach (ValidationFailure failure in result.Errors)
        {
            if (failure.Severity == Severity.Warning)
            {
                Warn(failure.PropertyName, failure.ErrorCode, failure.ErrorMessage);
            }
            else
            {
                Refuse(failure.PropertyName, failure.ErrorCode, failure.ErrorMessage, failure.CustomState as FindingRange);
            }
        }
    }

    private double? Number(Length? length) => length is { } known ? (double)known.In(Unit) : null;

    private string PathOf(string field)
    {
        string path = Path;
        return path.Length == 0 || field.Length == 0 ? path + field : $"{path}.{field}";
    }
}
