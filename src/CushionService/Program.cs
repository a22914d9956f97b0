using CushionService;
using CushionService.Grpc;
using CushionService.Rest;
using CushionService.Rest.OpenApi;
using Serilog;

WebApplicationBuilder builder = WebApplication.CreateBuilder(args);
builder.Services.AddSerilog(logger => logger.ReadFrom.Configuration(builder.Configuration), writeToProviders: true);
builder.ListenOnBothPorts();
builder.Services.AddSingleton<OrderDesk>();
builder.AddRestDoor();
builder.AddGrpcDoor();

WebApplication app = builder.Build();
app.UseProblems();
app.MapRestDoor();
app.MapGrpcDoor();
if (!await app.WriteContractIfAskedAsync(args))
{
    await app.RunAsync();
}
