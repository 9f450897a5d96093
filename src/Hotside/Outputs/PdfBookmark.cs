namespace Hotside.Outputs;

/// <summary>A bookmark of a document: a name in the list beside the pages, and where it leads.</summary>
/// <param name="Title">Its name.</param>
/// <param name="Page">The page, from 0.</param>
/// <param name="Top">Where on the page, in millimetres from its upper edge.</param>
internal sealed record PdfBookmark(string Title, int Page, double Top);
