namespace CushionService.Access;

/// <summary>The authority of tokens has not said yet with which keys it signs: whether a token is right cannot be
/// known.</summary>
internal sealed class AuthorityAwayException() : Exception("The authority of tokens has not answered yet.");
