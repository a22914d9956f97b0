using System.Text.Json;
using System.Text.Json.Nodes;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Engine.Messages;
using CushionService.Json;
using CushionService.Rejections;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Shows an order for a reading nook in every call, with what the desk answers to it, and a refusal.</summary>
internal sealed class Examples(OrderDesk desk) : IOperationFilter
{
    private static readonly byte[] Text = ReadText();

    /// <summary>The order: sound, small, and answered in milliseconds.</summary>
    public static Order Nook { get; } = OrderText.Parse(Text).Order!;

    /// <summary>Adds the order to the request, and answers to the responses.</summary>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (IOpenApiMediaType body in operation.RequestBody?.Content?.Values ?? [])
        {
            ((OpenApiMediaType)body).Example = JsonNode.Parse(Text);
        }

        Show(operation, "422", Problem.MediaType, Refused());
        Show(
            operation,
            "200",
            "application/json",
            operation.OperationId switch
            {
                "validate" => desk.Handle(Sent(Nook), Purposes.Validation, default).Answer,
                "estimateYardage" => desk.Handle(Sent(Nook), Purposes.Yardage, default).Answer,
                _ => null,
            }
        );
    }

    // Only where the operation has such a response: the catalogue has no order that could be refused.
    private static void Show(OpenApiOperation operation, string status, string mediaType, object? example)
    {
        if (
            example is not null
            && operation.Responses!.TryGetValue(status, out IOpenApiResponse? response)
            && response.Content is { } forms
            && forms.TryGetValue(mediaType, out IOpenApiMediaType? form)
            && form is OpenApiMediaType content
        )
        {
            content.Example = JsonSerializer.SerializeToNode(example, ContractJson.Options);
        }
    }

    // The order with a cushion that is too thick, and with prices but no currency. The trace is that of the standard's
    // example (W3C Trace Context).
    private Problem Refused()
    {
        Order thin = Nook with { Currency = null, Cushions = [Nook.Cushions![0] with { Thickness = Contract.Measure.Of(30) }] };
        Refusal refusal = desk.Handle(Sent(thin), Purposes.Check, default).Refusal!;
        return Problems.Of(refusal, Language.English, "00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-00");
    }

    private static ReceivedOrder Sent(Order order) => new(order, []);

    // The text is in the assembly: a person may read and change it beside this file.
    private static byte[] ReadText()
    {
        using Stream stream = typeof(Examples).Assembly.GetManifestResourceStream(typeof(Examples), "nook.json")!;
        byte[] text = new byte[stream.Length];
        stream.ReadExactly(text);
        return text;
    }
}
