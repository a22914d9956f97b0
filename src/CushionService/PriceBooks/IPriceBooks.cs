using CushionService.Engine.Specifications.Pricing;

namespace CushionService.PriceBooks;

/// <summary>Where orders find the price books that they name.</summary>
public interface IPriceBooks
{
    /// <summary>The current version of a book.</summary>
    /// <param name="name">The name that the order gives.</param>
    /// <returns>The book, which never changes; null for a name without a book.</returns>
    PriceBookSpecification? Find(string name);
}
