namespace CushionService.Engine.Costing;

/// <summary>What is charged on top of materials and labour.</summary>
public enum CostAdditionKind
{
    /// <summary>For spoilt material, as a share of the materials.</summary>
    Contingency,

    /// <summary>For the running of the shop.</summary>
    Overhead,

    /// <summary>Gain, as a share of the cost.</summary>
    Markup,

    /// <summary>Gain, as a share of the price.</summary>
    Margin,

    /// <summary>What the rounding of the price adds or takes.</summary>
    Rounding,

    /// <summary>Something else that is sold with the order.</summary>
    Line,

    /// <summary>A fee.</summary>
    Charge,

    /// <summary>What is taken off.</summary>
    Discount,

    /// <summary>What is missing to the least that an order costs.</summary>
    Minimum,

    /// <summary>Tax.</summary>
    Tax,
}
