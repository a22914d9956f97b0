using CushionService.Contract.Orders;
using FluentValidation;

namespace CushionService.Validation;

/// <summary>The rules of a piece of the maker's own.</summary>
internal sealed class LoosePieceValidator : AbstractValidator<LoosePiece>
{
    public LoosePieceValidator()
    {
        this.AddAttributeRules();
        RuleFor(piece => piece).Custom((piece, context) =>
        {
            if (piece.Width is null)
            {
                context.Refuse(nameof(LoosePiece.Width), "required", "Width is required.");
            }

            if (piece.Length is null)
            {
                context.Refuse(nameof(LoosePiece.Length), "required", "Length is required.");
            }
        });
    }
}
