namespace CushionService.PriceBooks;

/// <summary>Why a price book is refused.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Reason">A sentence, with the place as a JSON Pointer before it.</param>
internal sealed record PriceBookFault(string File, long Line, string Reason)
{
    public override string ToString() => $"{File}, line {Line}: {Reason}";
}
