using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a record that has none beyond its attributes.</summary>
internal sealed class AttributeValidator<T> : AbstractValidator<T>
{
    public AttributeValidator() => this.AddRules(AttributeRules.Of<T>());
}
