using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using CushionService.Contract;
using CushionService.Contract.Orders;
using CushionService.Desk;
using CushionService.Documents.Pictures;
using CushionService.Engine.Measures;
using CushionService.Engine.Messages;
using CushionService.Json;
using CushionService.Rejections;
using CushionService.Wording;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CushionService.Rest.OpenApi;

/// <summary>Shows an order for a reading nook in every call, with what the desk answers to it, and a refusal.</summary>
internal sealed class Examples(OrderDesk desk) : IOperationFilter
{
    // Fixed, so that the document is the same after every build.
    private const string Trace = "00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-00";

    // In the assembly: a person may read and change it beside this file.
    private static readonly byte[] Text = OrderText.Carried(typeof(Examples), "nook.json");

    // As a caller would write it: without what is left out.
    private static readonly JsonSerializerOptions Written = new(ContractJson.Options)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>The order: sound, small, and answered in milliseconds.</summary>
    public static Order Nook { get; } = OrderText.Parse(Text).Order!;

    /// <summary>Adds the order to the request, and answers to the responses.</summary>
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        Order order = ExampleOrders.For(operation.OperationId);
        foreach (IOpenApiMediaType body in operation.RequestBody?.Content?.Values ?? [])
        {
            JsonNode text = order == Nook ? JsonNode.Parse(Text)! : JsonSerializer.SerializeToNode(order, Written)!;
            if (operation.OperationId == "quote")
            {
                ((OpenApiMediaType)body).Examples = ConstructionExamples.With(text);
            }
            else
            {
                ((OpenApiMediaType)body).Example = text;
            }
        }

        Show(operation, "422", Problem.MediaType, Refused());
        foreach (string status in operation.Responses!.Keys.Where(status => status is not ("200" or "304" or "422")))
        {
            Show(operation, status, Problem.MediaType, Rejected(int.Parse(status, CultureInfo.InvariantCulture)));
        }

        Show(operation, "200", "application/json", AnswerTo(operation.OperationId, order));
        if (operation.OperationId == "drawPicture")
        {
            Show(operation, "200", "image/svg+xml", PictureOf(order));
        }
    }

    private object? AnswerTo(string? operation, Order order) =>
        operation switch
        {
            "validate" => desk.Handle(Sent(order), Purposes.Validation, default).Answer,
            "listPieces" => desk.Handle(Sent(order), Purposes.Pieces, default).Answer,
            "layOut" => desk.Handle(Sent(order), Purposes.Layout, default).Answer,
            "estimateYardage" => desk.Handle(Sent(order), Purposes.Yardage, default).Answer,
            "quote" => desk.Handle(Sent(order), Purposes.Quote, default).Answer,
            "compare" => desk.Handle(Sent(order), Purposes.Comparison, default).Answer,
            "fit" => desk.Handle(Sent(order), Purposes.Fit, default).Answer,
            "estimate" => desk.Handle(EstimateParameters.ShownOrder, Purposes.Estimate, default).Answer,
            // The whole of it is long: the first construction and a few fields, with all that is said of one.
            "getCatalogue" => CatalogueWording.In(Language.English) with
            {
                Constructions = [.. CatalogueWording.In(Language.English).Constructions.Take(1)],
                Fields = [.. CatalogueWording.In(Language.English).Fields.Take(3)],
            },
            _ => null,
        };

    private string PictureOf(Order order) =>
        Encoding.UTF8.GetString(
            desk.Handle(Sent(order), Printing.Picture(order.Cushions![0].Id, PictureView.Finished), default).Answer!.Bytes
        );

    // What the call itself is refused with, by its status.
    private static Problem Rejected(int status)
    {
        string code = status == StatusCodes.Status400BadRequest ? "unreadable-order" : CodeRegister.OfStatus(status);
        string title = new MessageWriter(Language.English, LengthUnit.Inch).Text(CodeRegister.Find(code)!.Meaning);
        return new Problem
        {
            Type = ProblemAddress.Of(code),
            Title = title,
            Status = status,
            Code = code,
            Violations = [],
            TraceId = Trace,
        };
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
        return Problems.Of(refusal, Language.English, Trace);
    }

    private static ReceivedOrder Sent(Order order) => new(order, []);
}
