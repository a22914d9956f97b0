using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Languages;
using CushionService.Rejections;
using Grpc.Core;
using Microsoft.AspNetCore.Http.Features;

namespace CushionService.Grpc;

/// <summary>What ends a call before it begins: bytes that are no message of it, or no Base64 where that is expected, which is the caller's
/// fault; or no memory to read them.</summary>
/// <remarks>They are read where nothing knows who reads the answer. The sentence is put into the reader's language when the call has
/// ended.</remarks>
internal static class UnreadableMessages
{
    private const string Detail = "grpc-message";

    // By fixed keys: no other status has them.
    private static readonly Dictionary<string, Message> Sentences = new()
    {
        [CallTexts.NoMessage.Key] = CallTexts.NoMessage,
        [CallTexts.NoMemory.Key] = CallTexts.NoMemory,
    };

    /// <summary>What reading such bytes throws.</summary>
    public static RpcException Exception => new(new Status(StatusCode.InvalidArgument, CallTexts.NoMessage.Key));

    /// <summary>What reading throws where there is no memory for it: the same call is welcome a little later.</summary>
    public static RpcException NoMemory => new(new Status(StatusCode.Unavailable, CallTexts.NoMemory.Key));

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
        if (status?.IsReadOnly == false && Sentences.TryGetValue(status[Detail].ToString(), out Message? sentence))
        {
            status[Detail] = TrailersOnly.Encoded(new MessageWriter(ReaderLanguage.Of(http), LengthUnit.Inch).Text(sentence));
        }
    }
}
