using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.JwtBearer;

namespace CushionService.Access;

/// <summary>Registers the tokens of an authority.</summary>
internal static class TokenSetup
{
    // Signatures with a public key alone: with a shared secret, who can verify a token could also make one.
    private static readonly string[] Algorithms = ["RS256", "RS384", "RS512", "PS256", "PS384", "PS512", "ES256", "ES384", "ES512"];

    /// <summary>Adds the scheme, and what fetches the authority's keys.</summary>
    public static void AddTokens(this WebApplicationBuilder builder, AuthenticationBuilder schemes, TokenOptions tokens)
    {
        builder.Services.AddSingleton(tokens);
        // An authority that hangs counts as away.
        builder.Services.AddHttpClient(AuthorityKeys.Client, static client => client.Timeout = TimeSpan.FromSeconds(5));
        builder.Services.AddSingleton<AuthorityKeys>();
        builder.Services.AddHostedService(services => services.GetRequiredService<AuthorityKeys>());
        schemes.AddJwtBearer();
        builder
            .Services.AddOptions<JwtBearerOptions>(JwtBearerDefaults.AuthenticationScheme)
            .Configure<AuthorityKeys>(
                (options, keys) =>
                {
                    options.ConfigurationManager = keys;
                    options.RequireHttpsMetadata = !tokens.IsLocal;
                    options.Audience = tokens.Audience;
                    options.MapInboundClaims = false;
                    // Clocks of servers that keep network time differ by less.
                    options.TokenValidationParameters.ClockSkew = TimeSpan.FromSeconds(30);
                    options.TokenValidationParameters.ValidAlgorithms = Algorithms;
                }
            );
    }
}
