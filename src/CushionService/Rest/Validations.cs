using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;
using CushionService.Contract.Orders;
using CushionService.Desk;

namespace CushionService.Rest;

/// <summary>The call that says whether an order can be made.</summary>
internal static class Validations
{
    private static readonly OrderCall<ValidationAnswer> Call = new(
        (ReceivedOrder reading, OrderDesk desk, CancellationToken cancellation) => reading.Validate(desk, cancellation)
    );

    public static void MapValidations(this IEndpointRouteBuilder v1) => v1.MapPost("/validations", Validate).TakesOrder<ValidationAnswer>();

    /// <summary>Check an order</summary>
    /// <remarks>Answers 200 for every order that can be read, with all the rules that it breaks and all that is allowed but unwise.</remarks>
    [RequiresScope(Scopes.Estimate)]
    private static Task Validate(HttpContext http, OrderDesk desk, OrderDispatcher work) => Call.AnswerAsync(http, desk, work);
}
