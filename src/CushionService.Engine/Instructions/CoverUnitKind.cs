namespace CushionService.Engine.Instructions;

/// <summary>What the parts of a cover are, once they are joined among themselves.</summary>
internal enum CoverUnitKind
{
    /// <summary>One part, called by its name.</summary>
    Single,

    /// <summary>The upper face.</summary>
    Top,

    /// <summary>The underside.</summary>
    Bottom,

    /// <summary>The loop between the faces.</summary>
    Boxing,

    /// <summary>The loop between the faces of a pouf.</summary>
    Wall,

    /// <summary>The strips of a closure that are in no loop.</summary>
    Section,

    /// <summary>The tube of a bolster.</summary>
    Body,
}
