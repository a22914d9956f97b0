using CushionService.Engine.Messages;

namespace CushionService.Rest.OpenApi;

/// <summary>A parameter of the query with which a call says which part of an answer it wants, or how. JSON always has all
/// parts.</summary>
/// <param name="Name">The parameter.</param>
/// <param name="Description">What it takes, for the OpenAPI document.</param>
/// <param name="Missing">The title of the problem, a 400, for another value, or one that names no part.</param>
/// <param name="Accepts">Whether a value can be read at all; null where only the answer tells.</param>
internal sealed record PartParameter(string Name, string Description, Message Missing, Func<string, bool>? Accepts = null);
