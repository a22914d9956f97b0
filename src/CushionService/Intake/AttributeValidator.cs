namespace CushionService.Intake;

/// <summary>The rules of a record that has none beyond its attributes.</summary>
internal sealed class AttributeValidator<T> : RecordValidator<T>
{
    public AttributeValidator()
        : base(AttributeRules.Of<T>()) { }
}
