using CushionService;
using CushionService.Grpc;
using CushionService.Rest;
using CushionService.Rest.OpenApi;
using CushionService.Streaming;
using Serilog;

WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
builder.Logging.ClearProviders();
builder.Services.AddSerilog(logger => logger.ReadFrom.Configuration(builder.Configuration), writeToProviders: true);
builder.ListenOnBothPorts();
builder.Services.AddSingleton<OrderDesk>();
builder.Services.AddSingleton<QuoteStream>();
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
