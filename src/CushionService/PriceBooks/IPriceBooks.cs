using CushionService.Engine.Specifications.Pricing;

namespace CushionService.PriceBooks;

/// <summary>Where orders find the price books that they name.</summary>
public interface IPriceBooks
{
    /// <summary>The book of a name as it now stands; null when there is none.</summary>
    PriceBookSpecification? Find(string name);
}
