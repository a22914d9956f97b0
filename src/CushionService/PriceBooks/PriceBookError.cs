namespace CushionService.PriceBooks;

/// <summary>Why a price book is refused.</summary>
/// <param name="File">The file's name, without its folder.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Reason">A sentence, with the place as a JSON Pointer and the code of the broken rule before it.</param>
internal sealed record PriceBookError(string File, long Line, string Reason)
{
    /// <summary>The error as it is shown when the start fails.</summary>
    public override string ToString() => $"{File}, line {Line}: {Reason}";
}
