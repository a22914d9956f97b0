namespace CushionService.PriceBooks;

/// <summary>Whether the caller whose order is being answered may bring prices of its own; one that may not is priced by price books alone.</summary>
public delegate bool MayBringPrices();
