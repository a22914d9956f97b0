using System.Security.Cryptography;
using CushionService.Access;
using CushionService.Tests.Hosting;
using Grpc.Core;
using V1 = CushionService.Grpc.V1;

namespace CushionService.Tests.Access;

/// <summary>Callers with keys, and a service that knows them.</summary>
internal static class Callers
{
    /// <summary>An order of one cushion, without prices.</summary>
    public const string Pillow = """
        {"units":"in","effort":"quick","cushions":[{"id":"pillow","construction":"knife-edge","outline":{"kind":"rectangle","width":18,
          "depth":18},
        "closure":{"kind":"zipper"}}],"fabrics":[{"id":"linen","width":54,"sold":{"unit":"yd","step":"1/8"}}]}
        """;

    /// <summary>The same order for gRPC.</summary>
    public static V1.Order PillowMessage =>
        new()
        {
            Units = V1.Units.In,
            Effort = V1.Effort.Quick,
            Cushions =
            {
                new V1.Cushion
                {
                    Id = "pillow",
                    Construction = V1.Construction.KnifeEdge,
                    Outline = new()
                    {
                        Kind = V1.OutlineKind.Rectangle,
                        Width = new() { Number = 18 },
                        Depth = new() { Number = 18 },
                    },
                    Closure = new() { Kind = V1.ClosureKind.Zipper },
                },
            },
            Fabrics =
            {
                new V1.Fabric
                {
                    Id = "linen",
                    Width = new() { Number = 54 },
                    Sold = new()
                    {
                        Unit = V1.SaleUnit.Yd,
                        Step = new() { Text = "1/8" },
                    },
                },
            },
        };

    /// <summary>A new key: 256 random bits.</summary>
    public static string NewKey() => Convert.ToHexString(RandomNumberGenerator.GetBytes(32));

    /// <summary>The settings of a key.</summary>
    public static (string, string)[] Settings(int index, string name, string key, params string[] scopes) =>
        [
            ($"Access:Keys:{index}:Name", name),
            ($"Access:Keys:{index}:Sha256", AccessPolicy.DigestOf(key)),
            .. scopes.Select((scope, i) => ($"Access:Keys:{index}:Scopes:{i}", scope)),
        ];

    /// <summary>Sends the order with a key.</summary>
    public static async Task<HttpResponseMessage> SendAsync(this RunningService service, string call, string? key, string order = Pillow)
    {
        using HttpRequestMessage request = new(HttpMethod.Post, new Uri($"/v1/{call}", UriKind.Relative))
        {
            Content = new StringContent(
                order,
                System.Text.Encoding.UTF8,
                call == "quotes/stream" ? "application/x-ndjson" : "application/json"
            ),
        };
        if (key is not null)
        {
            request.Headers.Add(KeyHandler.Header, key);
        }

        return await service.Http.SendAsync(request);
    }

    /// <summary>The headers of a gRPC call with a key.</summary>
    public static Metadata Headers(string? key) => key is null ? [] : [new Metadata.Entry("x-api-key", key)];

    /// <summary>How a gRPC call ended.</summary>
    public static async Task<(StatusCode Code, Metadata Trailers)> StatusAsync<T>(AsyncUnaryCall<T> call)
    {
        try
        {
            await call;
            return (StatusCode.OK, call.GetTrailers());
        }
        catch (RpcException refused)
        {
            return (refused.StatusCode, refused.Trailers);
        }
    }
}
