namespace CushionService.Access;

/// <summary>The balancers that are believed about where a call comes from, and that have the connections of many callers.</summary>
internal static class Proxies
{
    /// <summary>The networks that are configured; none when <c>Access:Proxies</c> is left out.</summary>
    /// <exception cref="InvalidOperationException">One is no network.</exception>
    /// <param name="configuration">The service's.</param>
    public static System.Net.IPNetwork[] Of(IConfiguration configuration) =>
        [
            .. (configuration.GetSection("Access:Proxies").Get<string[]>() ?? []).Select(proxy =>
                System.Net.IPNetwork.TryParse(proxy, out System.Net.IPNetwork network)
                    ? network
                    : throw new InvalidOperationException($"Access:Proxies: {proxy} is no network, such as 10.0.0.0/8.")
            ),
        ];
}
