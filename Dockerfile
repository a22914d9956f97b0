FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY . .
RUN dotnet publish src/CushionService --configuration Release --output /app

FROM mcr.microsoft.com/dotnet/aspnet:10.0
WORKDIR /app
COPY --from=build /app .
ENV ASPNETCORE_HTTP_PORTS= \
    ASPNETCORE_URLS=http://+:8080 \
    GRPC_URLS=http://+:8081
EXPOSE 8080 8081
USER $APP_UID
ENTRYPOINT ["dotnet", "CushionService.dll"]
