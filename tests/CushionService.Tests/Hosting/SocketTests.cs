using System.Net;
using System.Text;
using CushionService.Grpc.V1;
using Grpc.Net.Client;

namespace CushionService.Tests.Hosting;

/// <summary>The service as a process of its own, over real sockets: REST on one port, gRPC in clear text on the other.</summary>
public sealed class SocketTests
{
    private const string Order = """
        {"units":"in","pieces":[{"id":"runner","width":12,"length":40}],"fabrics":[{"id":"main","width":54,"sold":{"unit":"yd",
          "step":"1/8"}}]}
        """;

    [Fact]
    public async Task Each_door_answers_on_its_own_port()
    {
        await using ServiceProcess service = await ServiceProcess.StartAsync();
        using HttpClient http = new() { BaseAddress = service.Rest };
        using GrpcChannel channel = GrpcChannel.ForAddress(service.Grpc);
        using StringContent order = new(Order, Encoding.UTF8, "application/json");
        using HttpResponseMessage rest = await http.PostAsync(new Uri("/v1/yardage", UriKind.Relative), order);
        GetCatalogueResponse grpc = await new global::CushionService.Grpc.V1.CushionService.CushionServiceClient(channel).GetCatalogueAsync(
            new()
        );

        Assert.Equal(HttpStatusCode.OK, rest.StatusCode);
        Assert.Equal(HttpVersion.Version11, rest.Version);
        Assert.Equal((await rest.JsonAsync())["engine"]!.GetValue<string>(), grpc.Engine);
        Assert.All(service.Lines, line => Assert.DoesNotContain("WRN", line, StringComparison.Ordinal));
    }
}
