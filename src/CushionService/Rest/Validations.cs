using CushionService.Access;
using CushionService.Admission;
using CushionService.Contract.Answers;

namespace CushionService.Rest;

/// <summary>The call that says whether an order can be made.</summary>
internal static class Validations
{
    private static readonly OrderCall<ValidationAnswer> Call = new(
        (Reading reading, OrderDesk desk, CancellationToken cancellation) => reading.Validate(desk, cancellation)
    );

    public static void MapValidations(this IEndpointRouteBuilder v1) => v1.MapPost("/validations", Validate).TakesOrder<ValidationAnswer>();

    /// <summary>Check an order</summary>
    /// <remarks>Answers 200 for every order that can be read, with all the rules that it breaks and all that is allowed but unwise.</remarks>
    [Needs(Scopes.Estimate)]
    private static Task Validate(HttpContext http, OrderDesk desk, OrderWork work) => Call.AnswerAsync(http, desk, work);
}
