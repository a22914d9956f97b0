using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a workroom's settings.</summary>
internal sealed class WorkroomValidator : AbstractValidator<Workroom>
{
    public WorkroomValidator() => this.AddAttributeRules();
}
