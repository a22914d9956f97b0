using System.Text;
using CushionService.Rest.Pages;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace CushionService.Rest.OpenApi;

/// <summary>The OpenAPI document as bytes. Rendering takes about 200 ms of processor time, and no limit of callers
/// covers it: it is done once, when the document is first asked for.</summary>
/// <param name="services">Where the generator is: it is made when the document is first asked for, and not at the
/// start.</param>
internal sealed class RenderedContract(IServiceProvider services)
{
    private readonly Lock _lock = new();
    private Task<FixedAnswer>? _document;

    /// <summary>The document. The first caller has it rendered; a rendering that failed is tried again.</summary>
    public Task<FixedAnswer> Document
    {
        get
        {
            lock (_lock)
            {
                // Rendered by a thread of its own: whoever asks meanwhile waits for the task, and not for the lock.
                return _document is null or { IsFaulted: true } or { IsCanceled: true } ? _document = Task.Run(AnswerAsync) : _document;
            }
        }
    }

    /// <summary>Renders the document: its JSON text in UTF-8.</summary>
    public async Task<byte[]> RenderAsync()
    {
        OpenApiDocument document = await services
            .GetRequiredService<IAsyncSwaggerProvider>()
            .GetSwaggerAsync(ContractDocument.Version, null, null);
        return Encoding.UTF8.GetBytes(await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1));
    }

    private async Task<FixedAnswer> AnswerAsync() => new(await RenderAsync(), "application/json; charset=utf-8", "no-cache");
}
