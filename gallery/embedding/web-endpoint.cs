// A drawing streamed from a web endpoint: POST a job text, get a PNG, PDF or SVG, or what is wrong with the job.
//   dotnet run web-endpoint.cs --urls http://localhost:5080
//   curl --data-binary @../horn/job.yaml http://localhost:5080/pair.svg
#:sdk Microsoft.NET.Sdk.Web
#:project ../../src/Hotside/Hotside.csproj

using Hotside;

var app = WebApplication.CreateBuilder(args).Build();

app.MapPost("/{view}.{format}", async (string view, string format, HttpRequest request, HttpResponse response, CancellationToken cancel) =>
{
    if (!Enum.TryParse(view, ignoreCase: true, out View shown))
    {
        response.StatusCode = StatusCodes.Status404NotFound;
        return;
    }
    using var reader = new StreamReader(request.Body);
    ReadResult read = Job.Read(await reader.ReadToEndAsync(cancel));
    if (read.Job is not { } job)
    {
        response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        await response.WriteAsync(string.Join('\n', read.Diagnostics.Select(read.Print)), cancel);
        return;
    }
    Drawing drawing = job.Draw(shown, cancel: cancel);
    response.ContentType = format switch { "png" => "image/png", "pdf" => "application/pdf", _ => "image/svg+xml" };
    await (format switch
    {
        "png" => drawing.WritePngAsync(response.Body, 150, cancel),
        "pdf" => drawing.WritePdfAsync(response.Body, cancel),
        _ => drawing.WriteSvgAsync(response.Body, cancel),
    });
});

app.Run();
