using System.Text.Json.Nodes;
using CushionService.ClientGenerator;

// Writes the records of the OpenAPI document as C#: the document, the file.
if (args is not [string document, string file])
{
    await Console.Error.WriteLineAsync("CushionService.ClientGenerator openapi/v1.json Contract.g.cs");
    return 64;
}

JsonNode contract = JsonNode.Parse(await File.ReadAllTextAsync(document))!;
await File.WriteAllTextAsync(file, ContractText.Of(contract["components"]!["schemas"]!.AsObject()));
return 0;
