using CushionService.Engine.Cutting;
using CushionService.Engine.Materials;
using CushionService.Engine.Quoting;
using CushionService.Engine.Specifications;
using CushionService.Engine.Specifications.Stocks;
using CushionService.Engine.Specifications.Trimmings;

namespace CushionService.Engine.Tests.Patterns;

/// <summary>A cushion with something added to it, drafted alone in the default order.</summary>
internal static class TrimmedCushion
{
    public static Drafting Draft(CushionSpecification cushion, TrimSpecification trim) => Drafting.Of(Order(cushion with { Trim = trim }));

    public static CutPiece Piece(string part, CushionSpecification cushion, TrimSpecification trim) =>
        Draft(cushion, trim).Pieces.Single(piece => piece.Part.ToString() == part);

    public static Quote Quoted(CushionSpecification cushion, TrimSpecification trim) => Trade.Quote(Order(cushion with { Trim = trim }));

    public static Material Bought(Quote quote, MaterialKind kind) => quote.Materials.Single(material => material.Kind == kind);
}
