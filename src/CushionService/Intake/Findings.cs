using System.Globalization;
using CushionService.Engine.Measures;
using FluentValidation;
using FluentValidation.Results;

namespace CushionService.Intake;

/// <summary>A place in what is checked, and where rules report what they find there.</summary>
internal sealed class Findings
{
    private readonly Action<ValidationFailure> _report;
    private readonly Findings? _whole;
    private readonly string _name = "";
    private readonly int? _index;

    /// <summary>The whole.</summary>
    /// <param name="reading">How the order is read.</param>
    /// <param name="report">Takes each finding.</param>
    public Findings(OrderReading reading, Action<ValidationFailure> report) => (Reading, _report) = (reading, report);

    private Findings(Findings whole, string name, int? index)
        : this(whole.Reading, whole._report) => (_whole, _name, _index) = (whole, name, index);

    /// <summary>How the order is read.</summary>
    public OrderReading Reading { get; }

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

    /// <summary>Reports a broken rule at a field of what is checked, or a field of its parts.</summary>
    public void Refuse(string field, string code, string detail, FindingRange? range = null) =>
        Report(field, code, detail, Severity.Error, range);

    /// <summary>Reports something unwise.</summary>
    public void Warn(string field, string code, string detail) => Report(field, code, detail, Severity.Warning, null);

    /// <summary>Reports a length that is out of range.</summary>
    public void RefuseRange(string field, string code, string detail, Length? minimum, Length? maximum) =>
        Refuse(
            field,
            code,
            detail,
            new FindingRange(minimum is { } low ? Reading.Number(low) : null, maximum is { } high ? Reading.Number(high) : null)
        );

    private void Report(string field, string code, string detail, Severity severity, FindingRange? range)
    {
        string path = Path;
        string name = path.Length == 0 || field.Length == 0 ? path + field : $"{path}.{field}";
        _report(
            new ValidationFailure(name, detail)
            {
                ErrorCode = code,
                Severity = severity,
                CustomState = range,
            }
        );
    }
}
