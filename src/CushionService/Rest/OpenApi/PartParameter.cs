namespace CushionService.Rest.OpenApi;

/// <summary>The parameter of the query with which a call names the part of an answer that it wants, such as the fabric
/// of a drawing. JSON always has all parts.</summary>
/// <param name="Name">The parameter.</param>
/// <param name="Description">What it takes, for the OpenAPI document.</param>
/// <param name="Missing">The title of the problem, a 400, when there is no such part.</param>
internal sealed record PartParameter(string Name, string Description, string Missing);
