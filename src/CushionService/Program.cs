using CushionService.Access;
using CushionService.Admission;
using CushionService.Bulk;
using CushionService.Deprecations;
using CushionService.Desk;
using CushionService.Grpc;
using CushionService.Languages;
using CushionService.Operations;
using CushionService.PriceBooks;
using CushionService.Rejections;
using CushionService.Rest;
using CushionService.Rest.OpenApi;
using CushionService.Streaming;
using CushionService.Widget;

// One binary, several programs: an image without a shell has nothing else to start.
if (args is [HealthProbe.Option])
{
    return await HealthProbe.AskAsync();
}

if (args is [PriceBookCheck.Option, string folder])
{
    return PriceBookCheck.Run(folder, Console.Out);
}

if (args is [WorkerProgram.Option, .. string[] settings])
{
    return await WorkerProgram.RunAsync(settings);
}

if (args is [BulkProgram.Option, .. string[] files])
{
    return await BulkProgram.RunAsync(files, Console.Error);
}

if (args is [WidgetFiles.Option, string target])
{
    return WidgetFiles.Write(target, WidgetModule.Current);
}

// An option without what belongs to it must not start the service: who waits for its end would wait for good.
if (args is [HealthProbe.Option or PriceBookCheck.Option or WidgetFiles.Option, ..])
{
    Console.Error.WriteLine($"One of these, as it is: {HealthProbe.Option}; {PriceBookCheck.Option} FOLDER; {WidgetFiles.Option} FOLDER.");
    return 2;
}

if (Descriptors.Shortage is { } shortage)
{
    Console.Error.WriteLine(shortage);
    return 1;
}

WebApplicationBuilder builder = WebApplication.CreateBuilder(
    new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory }
);
builder.AddTelemetry();
builder.AddLifetime();
builder.ListenOnBothPorts();
builder.AddPriceBooks();
builder.Services.AddSingleton<OrderDesk>();
builder.Services.AddSingleton<QuoteStream>();
builder.AddDeprecations();
builder.AddAccess();
builder.AddAdmission();
builder.AddRestDoor();
builder.AddGrpcDoor();

WebApplication app = builder.Build();

// A request passes these in the order in which they are written here. Proxies come early, for all that follows asks who
// the caller is and by what address the service was called.
app.UseManagementPort();
app.UseProxies();
app.UseTraceHeader();
app.UseDeprecations();
app.UseReaderLanguage();

// A call of gRPC that has found its method says what became of it in its status alone.
app.UseWhen(
    static http => !http.IsGrpcCall(),
    static rest =>
    {
        rest.UseSecurityHeaders();
        rest.UseResponseCompression();
        rest.UseProblems();
    }
);

// Before access: a browser's preflight carries no key.
app.UseCors();
app.UseGrpcWebCalls();
app.UseWhen(static http => !http.IsGrpcCall(), static rest => rest.UseRequestEncodings());

// Access before admission, which gives each caller a share of its own.
app.UseAccess();
app.UseAdmission();
app.MapRestDoor();
app.MapGrpcDoor();
app.MapHealth();
app.MapTelemetry();
if (!await app.WriteContractIfAskedAsync(args))
{
    await app.RunToEndAsync();
}

return 0;
