# Bases are pinned by version; whoever releases pins them by digest: --build-arg SDK=…@sha256:… --build-arg RUNTIME=…@sha256:…
ARG SDK=mcr.microsoft.com/dotnet/sdk:10.0.401
ARG RUNTIME=mcr.microsoft.com/dotnet/aspnet:10.0.12-noble-chiseled

FROM ${SDK} AS build
WORKDIR /source
COPY . .
# Compiled ahead of time for a quick start; the runtime compiles anew what is hot.
RUN dotnet publish src/CushionService --configuration Release --runtime linux-x64 --no-self-contained \
    -p:PublishReadyToRun=true -p:DebugType=none --output /app

# No shell, no package manager, a user without rights. Nothing is written but to /tmp, and that only by the runtime's diagnostics, which are
# off.
FROM ${RUNTIME}
WORKDIR /app
COPY --from=build /app .
ENV ASPNETCORE_HTTP_PORTS= \
    ASPNETCORE_URLS=http://+:8080 \
    GRPC_URLS=http://+:8081 \
    DOTNET_EnableDiagnostics=0 \
    DOTNET_GCgen0size=0x4000000 \
    Serilog__WriteTo__0__Args__formatter="Serilog.Formatting.Compact.CompactJsonFormatter, Serilog.Formatting.Compact"
EXPOSE 8080 8081
USER 1654
HEALTHCHECK --interval=30s --timeout=5s --start-period=30s CMD ["dotnet", "CushionService.dll", "--check-health"]
ENTRYPOINT ["dotnet", "CushionService.dll"]
