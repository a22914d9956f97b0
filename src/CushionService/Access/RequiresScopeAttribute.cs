namespace CushionService.Access;

/// <summary>The scope that a call over REST or gRPC needs. An endpoint without this is open to everyone: health, the
/// contract, the pages.</summary>
/// <param name="scope">The scope.</param>
[AttributeUsage(AttributeTargets.Method)]
internal sealed class RequiresScopeAttribute(Scopes scope) : Attribute
{
    /// <summary>The scope.</summary>
    public Scopes Scope { get; } = scope;
}
