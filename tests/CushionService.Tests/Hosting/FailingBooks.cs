using CushionService.Engine.Specifications.Pricing;
using CushionService.PriceBooks;
using Microsoft.Extensions.DependencyInjection;

namespace CushionService.Tests.Hosting;

/// <summary>Price books that fail whenever one is looked for, for what is reported of a fault of ours. The exception quotes the
/// order, as an exception of the framework might.</summary>
internal sealed class FailingBooks : IPriceBooks
{
    public const string Secret = "the drawer with the scissors is stuck";

    public PriceBookSpecification? Find(string name) => throw new InvalidOperationException($"{Secret}: {name}");
}

internal static class FailingBooksSetup
{
    public static void AddFailingBooks(this IServiceCollection services) => services.AddSingleton<IPriceBooks, FailingBooks>();
}
