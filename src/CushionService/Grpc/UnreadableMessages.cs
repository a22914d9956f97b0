using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Languages;
using Grpc.Core;
using Microsoft.AspNetCore.Http.Features;

namespace CushionService.Grpc;

/// <summary>Bytes that are no message of their call, or no Base64 where that is expected: the caller's fault.</summary>
/// <remarks>They are read before the call begins, where nothing knows who reads the answer. The sentence is put into the reader's language
/// when the call has ended.</remarks>
internal static class UnreadableMessages
{
    private const string Detail = "grpc-message";

    // A fixed key: no other status has it.
    private static readonly string Key = CallTexts.NoMessage.Key;

    /// <summary>What reading such bytes throws.</summary>
    public static RpcException Exception => new(new Status(StatusCode.InvalidArgument, Key));

    /// <summary>Words the status.</summary>
    /// <param name="app">The pipeline; comes after gRPC-Web, which writes the trailers into the body.</param>
    public static void UseUnreadableMessages(this IApplicationBuilder app) =>
        app.UseWhen(
            static http => http.IsGrpcCall(),
            static calls =>
                calls.Use(
                    static async (http, next) =>
                    {
                        await next(http);
                        // An answer without a message has its status among the headers.
                        Word(http, http.Response.Headers);
                        Word(http, http.Features.Get<IHttpResponseTrailersFeature>()?.Trailers);
                    }
                )
        );

    private static void Word(HttpContext http, IHeaderDictionary? status)
    {
        if (status?.IsReadOnly == false && status[Detail] == Key)
        {
            status[Detail] = Uri.EscapeDataString(new MessageWriter(ReaderLanguage.Of(http), LengthUnit.Inch).Text(CallTexts.NoMessage));
        }
    }
}
