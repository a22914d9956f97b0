namespace CushionService.Rest;

/// <summary>A form that an answer comes in beside JSON.</summary>
/// <param name="MediaType">Its media type.</param>
/// <param name="Write">Writes the answer, or the part of it that the call names; null when there is no such part.</param>
/// <param name="WithoutPart">What to tell a caller who names no part that there is.</param>
internal sealed record Representation<TAnswer>(
    string MediaType,
    Func<TAnswer, string?, string?> Write,
    string WithoutPart = "There is no such part."
);
