using System.Net;
using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.IdentityModel.Tokens;

namespace CushionService.Tests.Access;

/// <summary>What an authority of tokens says of itself (OpenID Connect Discovery 1.0): its name, and its one key.</summary>
internal static class AuthorityDocuments
{
    /// <summary>The answer to a request for either document.</summary>
    /// <param name="request">Asks for the keys where its path ends so, and for the configuration elsewhere.</param>
    /// <param name="authority">The address of the authority.</param>
    /// <param name="rsa">The key that it signs with; its public part is given.</param>
    public static HttpResponseMessage Answer(HttpRequestMessage request, string authority, RSA rsa)
    {
        RSAParameters key = rsa.ExportParameters(false);
        object document = request.RequestUri!.AbsolutePath.EndsWith("keys", StringComparison.Ordinal)
            ? new
            {
                keys = new[]
                {
                    new
                    {
                        kty = "RSA",
                        use = "sig",
                        kid = "1",
                        n = Base64UrlEncoder.Encode(key.Modulus),
                        e = Base64UrlEncoder.Encode(key.Exponent),
                    },
                },
            }
            : new { issuer = authority, jwks_uri = authority + "/keys" };
        return new HttpResponseMessage(HttpStatusCode.OK) { Content = new StringContent(JsonSerializer.Serialize(document)) };
    }
}
