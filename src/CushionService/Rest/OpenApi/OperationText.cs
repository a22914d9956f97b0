namespace CushionService.Rest.OpenApi;

/// <summary>What the OpenAPI document says of a call. It is part of the metadata of the endpoint, where the filters
/// find it.</summary>
/// <param name="Operation">Its name in the document, from which generated clients name their methods. It never
/// changes.</param>
/// <param name="Tag">The heading that it is listed under.</param>
/// <param name="Summary">What it does, in a few words.</param>
/// <param name="Description">What a caller must know beyond the schemas; Markdown.</param>
internal sealed record OperationText(string Operation, string Tag, string Summary, string Description);
