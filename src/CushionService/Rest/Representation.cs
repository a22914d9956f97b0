using CushionService.Rest.OpenApi;

namespace CushionService.Rest;

/// <summary>A form that an answer comes in instead of JSON: a drawing, or a sheet to print.</summary>
/// <typeparam name="TAnswer">The record that it is made of.</typeparam>
/// <param name="MediaType">Its media type, which callers name in <c>Accept</c>.</param>
/// <param name="Write">Writes the answer, or the part of it that the call names; null when there is no such
/// part.</param>
/// <param name="Part">How a call names a part; null for a form of the whole answer.</param>
internal sealed record Representation<TAnswer>(string MediaType, Func<TAnswer, string?, string?> Write, PartParameter? Part = null);
