using System.IO.Compression;
using Grpc.Net.Compression;

namespace CushionService.Grpc;

/// <summary>A compression of messages that reports bytes which do not decompress as the caller's fault. Otherwise they would end the call
/// as a fault of the service, and be logged as one.</summary>
/// <param name="inner">The compression.</param>
internal sealed class CheckedCompression(ICompressionProvider inner) : ICompressionProvider
{
    /// <inheritdoc />
    public string EncodingName => inner.EncodingName;

    /// <inheritdoc />
    public Stream CreateCompressionStream(Stream stream, CompressionLevel? compressionLevel) =>
        inner.CreateCompressionStream(stream, compressionLevel);

    /// <inheritdoc />
    public Stream CreateDecompressionStream(Stream stream) => new Checked(inner.CreateDecompressionStream(stream));

    // Only reads: nothing else is done with a message that is unpacked.
    private sealed class Checked(Stream inner) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            try
            {
                return inner.Read(buffer);
            }
            catch (InvalidDataException)
            {
                throw UnreadableMessages.Exception;
            }
        }

        public override void Flush() => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
            if (disposing)
            {
                inner.Dispose();
            }

            base.Dispose(disposing);
        }
    }
}
