using System.Security.Cryptography;
using System.Text;
using Microsoft.Net.Http.Headers;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace CushionService.Rest.OpenApi;

/// <summary>The OpenAPI document as bytes. Rendering takes about 200 ms of processor time, and no limit of callers
/// covers it: it is done once, when the document is first asked for.</summary>
internal sealed class RenderedContract(IServiceProvider services)
{
    private readonly Lock _lock = new();
    private Task<Text>? _document;

    /// <summary>The document. The first caller has it rendered; a rendering that failed is tried again.</summary>
    public Task<Text> Document
    {
        get
        {
            lock (_lock)
            {
                return _document is null or { IsFaulted: true } or { IsCanceled: true } ? _document = RenderAsync() : _document;
            }
        }
    }

    // The tag is a digest of the text, so that a browser that has the document is not sent it again.
    private async Task<Text> RenderAsync()
    {
        OpenApiDocument document = await services
            .GetRequiredService<IAsyncSwaggerProvider>()
            .GetSwaggerAsync(ContractDocument.Version, null, null);
        byte[] bytes = Encoding.UTF8.GetBytes(await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1));
        return new Text(bytes, new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 16))}\""));
    }

    /// <summary>A rendered document.</summary>
    /// <param name="Bytes">Its JSON text in UTF-8.</param>
    /// <param name="Tag">Its strong entity tag: another for every other text.</param>
    internal sealed record Text(byte[] Bytes, EntityTagHeaderValue Tag);
}
