using System.IO.Pipelines;
using CushionService.Languages;
using Microsoft.AspNetCore.Http.Features;

namespace CushionService.Grpc;

/// <summary>gRPC-Web, whose text form is Base64: a body that is none is the caller's fault, and not one of the service.</summary>
internal static class GrpcWebText
{
    private const string TextForm = "application/grpc-web-text";

    /// <summary>Lets every call of gRPC come as gRPC-Web too.</summary>
    /// <param name="app">The pipeline; comes after routing and before the calls.</param>
    /// <remarks>The framework's decoder lies between two readers of ours: the outer one sees its exceptions, the inner
    /// one gives the server its buffer back.</remarks>
    public static void UseGrpcWebCalls(this WebApplication app)
    {
        app.Use(
            (http, next) =>
            {
                if (http.Request.ContentType?.StartsWith(TextForm, StringComparison.OrdinalIgnoreCase) == true && http.IsGrpcCall())
                {
                    Encoded encoded = new(http.Request.BodyReader);
                    http.Features.Set<IRequestBodyPipeFeature>(encoded);
                    http.Items[typeof(Encoded)] = encoded;
                }

                return next(http);
            }
        );
        app.UseGrpcWeb(new GrpcWebOptions { DefaultEnabled = true });
        app.UseUnreadableMessages();
        app.Use(
            (http, next) =>
            {
                if (http.IsGrpcCall() && http.Items[typeof(Encoded)] is Encoded encoded)
                {
                    http.Features.Set<IRequestBodyPipeFeature>(new Decoded(http.Request.BodyReader, encoded));
                }

                return next(http);
            }
        );
    }

    // Passes everything on.
    private abstract class Passing(PipeReader inner) : PipeReader, IRequestBodyPipeFeature
    {
        public PipeReader Reader => this;

        public override ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default) =>
            inner.ReadAsync(cancellationToken);

        public override bool TryRead(out ReadResult result) => inner.TryRead(out result);

        public override void AdvanceTo(SequencePosition consumed) => inner.AdvanceTo(consumed);

        public override void AdvanceTo(SequencePosition consumed, SequencePosition examined) => inner.AdvanceTo(consumed, examined);

        public override void CancelPendingRead() => inner.CancelPendingRead();

        public override void Complete(Exception? exception = null) => inner.Complete(exception);
    }

    // The body as it came. The decoder gives nothing back when it fails, and the server waits for that.
    private sealed class Encoded(PipeReader inner) : Passing(inner)
    {
        private SequencePosition? _end;

        public override async ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default)
        {
            ReadResult result = await base.ReadAsync(cancellationToken);
            _end = result.Buffer.End;
            return result;
        }

        public override void AdvanceTo(SequencePosition consumed)
        {
            _end = null;
            base.AdvanceTo(consumed);
        }

        public override void AdvanceTo(SequencePosition consumed, SequencePosition examined)
        {
            _end = null;
            base.AdvanceTo(consumed, examined);
        }

        public void GiveBack()
        {
            if (_end is { } end)
            {
                AdvanceTo(end);
            }
        }
    }

    private sealed class Decoded(PipeReader inner, Encoded encoded) : Passing(inner)
    {
        public override async ValueTask<ReadResult> ReadAsync(CancellationToken cancellationToken = default)
        {
            try
            {
                return await base.ReadAsync(cancellationToken);
            }
            catch (Exception exception) when (exception is InvalidOperationException or FormatException)
            {
                encoded.GiveBack();
                throw UnreadableMessages.Exception;
            }
        }
    }
}
