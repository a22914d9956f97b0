using Microsoft.AspNetCore.HttpOverrides;

namespace CushionService.Access;

/// <summary>Registers access: keys, tokens, the origins of pages, and the proxies that are believed.</summary>
internal static class AccessSetup
{
    /// <summary>Adds the services. A wrong configuration stops the start.</summary>
    public static void AddAccess(this WebApplicationBuilder builder)
    {
        // A file of its own for keys, such as a mounted secret, is read after the rest and watched.
        if (builder.Configuration["Access:File"] is { } file)
        {
            builder.Configuration.AddJsonFile(Path.GetFullPath(file), optional: false, reloadOnChange: true);
        }

        builder.Services.AddSingleton<AccessPolicyMonitor>();
        builder.Services.AddSingleton(TimeProvider.System);
        builder.AddOrigins();
        TokenOptions tokens = builder.Configuration.GetSection("Access:Tokens").Get<TokenOptions>() ?? new();
        if (tokens.Authority is not null)
        {
            builder
                .Services.AddAuthentication()
                .AddJwtBearer(options =>
                {
                    options.Authority = tokens.Authority;
                    options.Audience = tokens.Audience;
                    options.MapInboundClaims = false;
                    // Clocks of servers that keep network time differ by less.
                    options.TokenValidationParameters.ClockSkew = TimeSpan.FromSeconds(30);
                    // Signatures with a public key alone: with a shared secret, who can verify a token could also make
                    // one.
                    options.TokenValidationParameters.ValidAlgorithms =
                    [
                        "RS256",
                        "RS384",
                        "RS512",
                        "PS256",
                        "PS384",
                        "PS512",
                        "ES256",
                        "ES384",
                        "ES512",
                    ];
                });
        }

        string[] proxies = builder.Configuration.GetSection("Access:Proxies").Get<string[]>() ?? [];
        builder.Services.Configure<ForwardedHeadersOptions>(options =>
        {
            options.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            // The defaults believe loopback: here only what is configured is believed.
            options.KnownProxies.Clear();
            options.KnownIPNetworks.Clear();
            foreach (string proxy in proxies)
            {
                options.KnownIPNetworks.Add(System.Net.IPNetwork.Parse(proxy));
            }
        });
    }

    /// <summary>Takes the caller's address and scheme from the headers of a known proxy. Comes first, since limits are
    /// counted by address.</summary>
    public static void UseProxies(this WebApplication app)
    {
        // Without a known proxy no header is believed about where a call comes from.
        if (app.Configuration.GetSection("Access:Proxies").Exists())
        {
            app.UseForwardedHeaders();
        }
    }

    /// <summary>Authenticates callers, and rejects those without the scope of their call.</summary>
    public static void UseAccess(this WebApplication app)
    {
        // Made now, so that a wrong configuration stops the start and not the first call.
        _ = app.Services.GetRequiredService<AccessPolicyMonitor>();
        app.UseMiddleware<AccessControl>();
    }
}
