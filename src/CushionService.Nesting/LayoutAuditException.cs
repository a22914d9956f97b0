namespace CushionService.Nesting;

/// <summary>A layout broke an invariant that every layout must keep. Only a defect of the kernel can cause it.</summary>
public sealed class LayoutAuditException : InvalidOperationException
{
    /// <summary>Names the invariant that was broken.</summary>
    /// <param name="invariant">The invariant, as a sentence.</param>
    public LayoutAuditException(string invariant)
        : base(invariant) { }
}
