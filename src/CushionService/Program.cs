using CushionService;
using CushionService.Grpc;
using CushionService.PriceBooks;
using CushionService.Rest;
using CushionService.Rest.OpenApi;
using CushionService.Streaming;
using Serilog;

WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
builder.Logging.ClearProviders();
builder.Services.AddSerilog(logger => logger.ReadFrom.Configuration(builder.Configuration), writeToProviders: true);
builder.ListenOnBothPorts();
builder.AddPriceBooks();
builder.Services.AddSingleton(provider => new OrderDesk(provider.GetRequiredService<PriceBookShelf>(), provider.GetRequiredService<MayBringPrices>()));
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
